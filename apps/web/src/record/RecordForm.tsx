'use client';

import type { EntryKind } from '@quartermark/engine/log';
import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { EntryForm } from './EntryForm.tsx';
import { emptyFields } from './record-fields.ts';
import type { Start } from './start.ts';
import { useAboutCar } from './use-about-car.ts';

/** What the address of a form says beside the car and the kind. */
export type RecordOf = {
  /** items that were done, where the way here began at them */
  items: readonly string[];
  /** the component it is about */
  component: string | null;
  /** the finding, incident or notice that is answered */
  notice: string | null;
};

type RecordFormProps = { garageId: string; carId: string; kind: EntryKind; of: RecordOf };

/** Writes down something that happened to a car. */
export function RecordForm({ garageId, carId, kind, of }: RecordFormProps) {
  const trpc = useTRPC();
  const router = useRouter();
  const where = { garageId, carId };
  const about = useAboutCar(where);
  const { data: last } = useSuspenseQuery(trpc.car.lastValues.queryOptions(where));
  const { component, notice } = of;
  const [ticked] = useState(() =>
    of.items.filter((itemId) => about.items.some(({ id }) => id === itemId)),
  );
  const [start] = useState<Start>(() => ({
    entryId: newId(),
    today: about.garage.today,
    unit: about.unit,
    volumeUnit: about.garage.volumeUnit,
    last,
    component,
    notice,
  }));
  const toCar = () => router.push(`/g/${garageId}/car/${carId}` as Route);
  // what is about one thing is not the draft of another
  const draft = ['record', carId, kind, component ?? notice].filter((part) => part !== null);
  return (
    <EntryForm
      about={about}
      kind={kind}
      base={null}
      start={start}
      initial={emptyFields(start)}
      draft={draft.join(':')}
      last={last}
      ticked={ticked}
      onDone={toCar}
      onLeave={toCar}
    />
  );
}
