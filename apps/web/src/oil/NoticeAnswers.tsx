'use client';

import type { CarView } from '@quartermark/api/client';
import type { Analysis } from '@quartermark/engine';
import { type EntryDraft, OIL_ANSWERS } from '@quartermark/engine/log';
import { useState } from 'react';
import { newId } from '../client/make-id.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, useToast } from '../components/index.ts';
import { useEntryDoor } from '../record/entry-door.ts';

type Notice = Analysis['oil']['notices'][number];
type NoticeAnswersProps = { notice: Notice; view: CarView };

const WAYS = {
  useRisen: [OIL_ANSWERS.really, OIL_ANSWERS.nothing],
  unexplainedRise: [OIL_ANSWERS.misread, OIL_ANSWERS.nothing],
} as const;

/** What a person can say of a notice, as an entry of the log with the way back. */
export function NoticeAnswers({ notice, view }: NoticeAnswersProps) {
  const { kind } = notice;
  if (kind !== 'useRisen' && kind !== 'unexplainedRise') return null;
  return WAYS[kind].map((words) => (
    <Answer key={words} words={words} notice={notice} view={view} />
  ));
}

function Answer({ words, notice, view }: NoticeAnswersProps & { words: string }) {
  const toast = useToast();
  const door = useEntryDoor();
  const { garage, carId } = view;
  const record = useCommand(garage.id, door.record, ({ message }) =>
    toast({ words: 'Not saved.', detail: message, tone: 'alarm' }),
  );
  // stays the same until it is saved: pressed again after no answer, the same answer is meant
  const [id, setId] = useState(newId);

  async function answer() {
    const entry: EntryDraft = {
      id,
      kind: 'answer',
      on: garage.today,
      zone: garage.zone,
      car: carId,
      notice: notice.id,
      answer: words,
    };
    const sent = await record.send({ entry });
    if (!sent) return;
    setId(newId());
    const baseRevision = sent.at === 'server' ? sent.written.revision : 1;
    const undo = () =>
      door.remove({ garageId: garage.id, commandId: newId(), entryId: id, baseRevision });
    door.away({ carId, entryId: id, sent, undo, words: `Answered: ${words}.` });
  }

  return (
    <Button look="quiet" busy={record.busy} busyWords="Saving …" onClick={answer}>
      {words}
    </Button>
  );
}
