'use client';

import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { EntryForm } from './EntryForm.tsx';
import { emptyFields, type Start } from './record-fields.ts';
import type { RecordKind } from './record-kinds.ts';

type RecordFormProps = {
  garageId: string;
  carId: string;
  kind: RecordKind;
  /** an item that was done, where the way here began at it */
  itemId: string | null;
};

/** Writes down something that happened to a car. */
export function RecordForm({ garageId, carId, kind, itemId }: RecordFormProps) {
  const trpc = useTRPC();
  const router = useRouter();
  const where = { garageId, carId };
  const { data: view } = useSuspenseQuery(trpc.car.view.queryOptions(where));
  const { data: last } = useSuspenseQuery(trpc.car.lastValues.queryOptions(where));
  const [start] = useState<Start>(() => ({
    entryId: newId(),
    today: view.garage.today,
    unit: view.car.unit,
    volumeUnit: view.garage.volumeUnit,
    last,
  }));
  const known = view.items.some(({ id }) => id === itemId);
  const toCar = () => router.push(`/g/${garageId}/car/${carId}` as Route);
  return (
    <EntryForm
      view={view}
      kind={kind}
      base={null}
      start={start}
      initial={emptyFields(start)}
      draft={`record:${carId}:${kind}`}
      last={last}
      itemId={known ? itemId : null}
      onDone={toCar}
      onLeave={toCar}
    />
  );
}
