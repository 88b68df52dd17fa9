'use client';

import { useSuspenseQuery } from '@tanstack/react-query';
import { useTRPC } from '../client/trpc.ts';
import { PageAnswer } from '../components/index.ts';
import { BeginForm } from './BeginForm.tsx';

type BeginScreenProps = { garageId: string; carId: string };

/** The starting interview: a car without papers becomes usable, an answer at a time. */
export function BeginScreen({ garageId, carId }: BeginScreenProps) {
  const trpc = useTRPC();
  const { data: view } = useSuspenseQuery(trpc.car.view.queryOptions({ garageId, carId }));
  const { data: last } = useSuspenseQuery(trpc.car.lastValues.queryOptions({ garageId, carId }));
  return (
    <>
      <PageAnswer
        about={view.car.name}
        beneath="What you leave open is not added, and can be answered later."
      >
        What runs out on this car, and when was each last done?
      </PageAnswer>
      <BeginForm view={view} last={last} />
    </>
  );
}
