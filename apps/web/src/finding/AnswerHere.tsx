'use client';

import type { EntryDraft } from '@quartermark/engine/log';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, Notice, TextField } from '../components/index.ts';
import { useEntryDoor } from '../record/entry-door.ts';
import styles from './AnswerHere.module.css';

type AnswerHereProps = {
  garage: { id: string; today: string; zone: string };
  /** what it is about: a set, a tool or a person */
  gearId: string;
  /** the entry that is answered */
  notice: string;
  name: string;
};

/** Says what became of a finding that is about no car, where it stands. */
export function AnswerHere({ garage, gearId, notice, name }: AnswerHereProps) {
  const [open, setOpen] = useState(false);
  const [text, setText] = useState('');
  const [asked, setAsked] = useState(false);
  const trpc = useTRPC();
  const client = useQueryClient();
  const door = useEntryDoor();
  const record = useCommand(garage.id, door.record);
  // made once: pressed again after no answer, the same answer is meant
  const [id] = useState(newId);

  async function save() {
    setAsked(true);
    if (text.trim() === '') return;
    const { today: on, zone } = garage;
    const answer: EntryDraft = {
      id,
      kind: 'answer',
      on,
      zone,
      gear: gearId,
      notice,
      answer: text.trim(),
    };
    const sent = await record.send({ entry: answer });
    if (!sent) return;
    const refresh = () => client.invalidateQueries({ queryKey: trpc.finding.pathKey() });
    const baseRevision = sent.at === 'server' ? sent.written.revision : 1;
    const removing = { garageId: garage.id, commandId: newId(), entryId: id, baseRevision };
    const undo = async () => {
      await door.remove(removing);
      await refresh();
    };
    door.away({ carId: null, entryId: id, sent, undo });
    await refresh();
  }

  if (!open)
    return (
      <Button look="quiet" aria-label={`Answered: ${name}`} onClick={() => setOpen(true)}>
        Answered
      </Button>
    );
  const missing = asked && text.trim() === '' ? 'Say what was done about it.' : null;
  return (
    <form
      className={styles.form}
      aria-label={`Answer: ${name}`}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <TextField
        label="What was done about it?"
        autoComplete="off"
        maxLength={200}
        value={text}
        error={record.trouble?.fields['entry.answer'] ?? missing}
        onChange={(event) => setText(event.currentTarget.value)}
      />
      {record.trouble ? <Notice tone="alarm">{record.trouble.message}</Notice> : null}
      <div className={styles.presses}>
        <Button type="submit" busy={record.busy} busyWords="Saving …">
          Save the answer
        </Button>
        <Button look="quiet" onClick={() => setOpen(false)}>
          Not now
        </Button>
      </div>
    </form>
  );
}
