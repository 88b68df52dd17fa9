'use client';

import type { EntryView } from '@quartermark/api/client';
import type { EntryInput } from '@quartermark/engine/log';
import { useQueryClient } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, Notice } from '../components/index.ts';
import { QUESTIONS } from '../record/asked.ts';
import { useEntryDoor } from '../record/entry-door.ts';
import styles from './EntryScreen.module.css';

type EntryProps = {
  garageId: string;
  shown: EntryView;
  /** null for what is about no car */
  carId: string | null;
  /** where to go once it is done */
  to: string;
};

/** What was answered when it was first recorded is not asked again. */
const CONFIRMED = [...QUESTIONS];

/** Takes an entry out of the count. A removed one is never revived: the way back records it anew. */
export function RemoveEntry({ garageId, shown, carId, to }: EntryProps) {
  const { entry, revision: baseRevision } = shown;
  const trpc = useTRPC();
  const client = useQueryClient();
  const router = useRouter();
  const door = useEntryDoor();
  const remove = useCommand(garageId, door.remove);

  async function press() {
    const sent = await remove.send({ entryId: entry.id, baseRevision });
    if (!sent) return client.invalidateQueries({ queryKey: trpc.car.view.pathKey() });
    const again: EntryInput = { ...entry, id: newId() };
    const recording = { garageId, commandId: newId(), entry: again, confirmed: CONFIRMED };
    const undo = () => door.record(recording);
    door.away({ carId, entryId: entry.id, sent, undo, words: 'Entry removed.' });
    router.push(to as Route);
  }

  return (
    <>
      <Button busy={remove.busy} busyWords="Removing …" onClick={press}>
        Remove
      </Button>
      {remove.trouble ? (
        <div className={styles.trouble}>
          <Notice tone="alarm">{remove.trouble.message}</Notice>
        </div>
      ) : null}
    </>
  );
}

/** Records what a removed entry said as a new one. */
export function RecordAgain({ garageId, shown: { entry }, carId, to }: EntryProps) {
  const router = useRouter();
  const door = useEntryDoor();
  const [again] = useState<EntryInput>(() => ({ ...entry, id: newId() }));
  const record = useCommand(garageId, door.record);

  async function press() {
    const sent = await record.send({ entry: again, confirmed: CONFIRMED });
    if (!sent) return;
    const baseRevision = sent.at === 'server' ? sent.written.revision : 1;
    const removing = { garageId, commandId: newId(), entryId: again.id, baseRevision };
    door.away({ carId, entryId: again.id, sent, undo: () => door.remove(removing) });
    router.push(to as Route);
  }

  return (
    <>
      <Button look="main" busy={record.busy} busyWords="Recording …" onClick={press}>
        Record it again
      </Button>
      {record.trouble ? (
        <div className={styles.trouble}>
          <Notice tone="alarm">{record.trouble.message}</Notice>
        </div>
      ) : null}
    </>
  );
}
