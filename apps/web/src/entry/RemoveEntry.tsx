'use client';

import type { CarView, EntryView } from '@quartermark/api/client';
import type { EntryInput } from '@quartermark/engine/log';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { useAfterSave } from '../client/AfterSave.tsx';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, Notice } from '../components/index.ts';
import styles from './EntryScreen.module.css';

type EntryProps = { shown: EntryView; view: CarView };

/** What was answered when it was first recorded is not asked again. */
const CONFIRMED = ['odometerBackwards' as const, 'orderUnclear' as const];

/** What follows a removal or its reverse: it is said, and the car is shown. */
function useToCar({ garage, carId }: CarView) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const router = useRouter();
  const refresh = async () => {
    const queryKey = trpc.car.view.queryKey({ garageId: garage.id, carId });
    await client.invalidateQueries({ queryKey });
    void client.invalidateQueries({ queryKey: trpc.garage.overview.pathKey() });
  };
  return {
    refresh,
    toCar: () => router.push(`/g/${garage.id}/car/${carId}` as Route),
  };
}

/** Takes an entry out of the count. A removed one is never revived: the way back records it anew. */
export function RemoveEntry({ shown, view }: EntryProps) {
  const { garage, carId } = view;
  const { entry, revision: baseRevision } = shown;
  const trpc = useTRPC();
  const afterSave = useAfterSave();
  const { refresh, toCar } = useToCar(view);
  const { mutateAsync: record } = useMutation(trpc.entry.record.mutationOptions());
  const remove = useCommand(
    garage.id,
    useMutation(trpc.entry.remove.mutationOptions()).mutateAsync,
  );

  async function press() {
    const removed = await remove.send({ entryId: entry.id, baseRevision });
    if (!removed) return refresh();
    const again: EntryInput = { ...entry, id: newId() };
    const recording = {
      garageId: garage.id,
      commandId: newId(),
      entry: again,
      confirmed: CONFIRMED,
    };
    const { id: entryId, revision, version } = removed;
    const undo = async () => {
      await record(recording);
      await refresh();
    };
    afterSave({ carId, entryId, revision, version, undo, words: 'Entry removed.' });
    void refresh();
    toCar();
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
export function RecordAgain({ shown: { entry }, view }: EntryProps) {
  const { garage, carId } = view;
  const trpc = useTRPC();
  const afterSave = useAfterSave();
  const { refresh, toCar } = useToCar(view);
  const [again] = useState<EntryInput>(() => ({ ...entry, id: newId() }));
  const { mutateAsync: remove } = useMutation(trpc.entry.remove.mutationOptions());
  const record = useCommand(
    garage.id,
    useMutation(trpc.entry.record.mutationOptions()).mutateAsync,
  );

  async function press() {
    const written = await record.send({ entry: again, confirmed: CONFIRMED });
    if (!written) return;
    const { id: entryId, revision, version } = written;
    const removing = { garageId: garage.id, commandId: newId(), entryId, baseRevision: revision };
    const undo = async () => {
      await remove(removing);
      await refresh();
    };
    afterSave({ carId, entryId, revision, version, undo });
    void refresh();
    toCar();
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
