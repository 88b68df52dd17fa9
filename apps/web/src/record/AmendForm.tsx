'use client';

import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { useTRPC } from '../client/trpc.ts';
import { EntryForm } from './EntryForm.tsx';
import { fieldsOf, type Start } from './record-fields.ts';
import { recordKindOf } from './record-kinds.ts';

type AmendFormProps = { garageId: string; carId: string; entryId: string };

/** Puts an entry right, its fields filled exactly as they were typed. */
export function AmendForm({ garageId, carId, entryId }: AmendFormProps) {
  const trpc = useTRPC();
  const router = useRouter();
  const { data: view } = useSuspenseQuery(trpc.car.view.queryOptions({ garageId, carId }));
  const { data: standing } = useSuspenseQuery(trpc.entry.one.queryOptions({ garageId, entryId }));
  // what the form was opened with: it stays the same while the page is kept up to date
  const [opened] = useState(standing);
  const [start] = useState<Start>(() => ({
    entryId,
    today: view.garage.today,
    unit: view.car.unit,
    volumeUnit: view.garage.volumeUnit,
    last: null,
  }));
  return (
    <EntryForm
      view={view}
      kind={recordKindOf(opened.entry.kind) ?? 'other'}
      base={opened.entry}
      start={start}
      initial={fieldsOf(opened.entry, opened.revision, start)}
      draft={`entry:${entryId}`}
      last={null}
      onDone={() => router.push(`/g/${garageId}/car/${carId}` as Route)}
      onLeave={() => router.push(`/g/${garageId}/entry/${entryId}` as Route)}
    />
  );
}
