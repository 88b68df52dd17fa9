'use client';

import type { CarView, EntryView } from '@quartermark/api/client';
import type { Flag } from '@quartermark/engine';
import { type EntryDraft, sameUseNotice } from '@quartermark/engine/log';
import { useState } from 'react';
import { newId } from '../client/make-id.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, useToast } from '../components/index.ts';
import { useEntryDoor } from '../record/entry-door.ts';

type TwinProps = { flag: Flag; entry: EntryView; view: CarView };

/** The two ways out where an entry looks the same as another: one goes, or both are right. */
export function TwinWays({ flag, entry, view }: TwinProps) {
  const toast = useToast();
  const door = useEntryDoor();
  const say = ({ message }: { message: string }) =>
    toast({ words: 'Not saved.', detail: message, tone: 'alarm' });
  const garageId = view.garage.id;
  const { carId } = view;
  const remove = useCommand(garageId, door.remove, say);
  // stays the same until it is saved: pressed again after no answer, the same answer is meant
  const [answerId, setAnswerId] = useState(newId);
  const record = useCommand(garageId, door.record, say);

  async function removeIt() {
    const { id } = entry.entry;
    const sent = await remove.send({ entryId: id, baseRevision: entry.revision });
    if (!sent) return;
    // a removed one is never revived: the way back records it anew, and asks nothing again
    const again = { ...entry.entry, id: newId() };
    const recording = {
      garageId,
      commandId: newId(),
      entry: again,
      confirmed: ['odometerBackwards', 'orderUnclear', 'looksTheSame'] as const,
    };
    const undo = () => door.record({ ...recording, confirmed: [...recording.confirmed] });
    door.away({ carId, entryId: id, sent, undo, words: 'Entry removed.' });
  }

  async function keepBoth() {
    if (flag.entry === null || !flag.other) return;
    const answer: EntryDraft = {
      id: answerId,
      kind: 'answer',
      on: view.garage.today,
      zone: view.garage.zone,
      car: carId,
      notice: sameUseNotice(flag.entry, flag.other),
      answer: 'Both are right',
    };
    const sent = await record.send({ entry: answer });
    if (!sent) return;
    setAnswerId(newId());
    const baseRevision = sent.at === 'server' ? sent.written.revision : 1;
    const removing = { garageId, commandId: newId(), entryId: answer.id, baseRevision };
    const undo = () => door.remove(removing);
    door.away({ carId, entryId: answer.id, sent, undo, words: 'Both stay, and both count.' });
  }

  return (
    <>
      <Button look="quiet" busy={remove.busy} busyWords="Removing …" onClick={removeIt}>
        Remove this one
      </Button>
      <Button look="quiet" busy={record.busy} busyWords="Saving …" onClick={keepBoth}>
        Both are right
      </Button>
    </>
  );
}
