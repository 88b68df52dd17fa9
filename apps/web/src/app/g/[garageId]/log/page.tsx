import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { History } from '../../../../car/History.tsx';
import { historyQuestion, readFilter } from '../../../../car/history-filter.ts';
import { historyPages } from '../../../../car/history-pages.ts';
import { PageAnswer } from '../../../../components/index.ts';
import { Page } from '../../../../frame/Page.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../server/ask.ts';
import { everyCar } from '../../../../server/every-car.ts';

export const metadata: Metadata = { title: 'Log' };

type LogProps = {
  params: Promise<{ garageId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export default async function Log({ params, searchParams }: LogProps) {
  const { garageId } = await params;
  const garages = await pageCache().fetchQuery(ask().garage.mine.queryOptions());
  const garage = garages.find(({ id }) => id === garageId);
  if (!garage) notFound();
  const cars = (await everyCar(garageId)).map(({ carId, name }) => ({ carId, name }));
  const asked = readFilter(await searchParams);
  // a car that has left, or never was here, cannot be asked for
  const known = cars.some(({ carId }) => carId === asked.car);
  const filter = known ? asked : { ...asked, car: null };
  await orNotFound(
    pageCache().fetchInfiniteQuery(
      ask().entry.history.infiniteQueryOptions(historyQuestion({ garageId }, filter), historyPages),
    ),
  );
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <PageAnswer about={garage.name}>Everything that is on record, the newest first.</PageAnswer>
        <History
          view={{ garage: { id: garageId }, items: [], analysis: null }}
          filter={filter}
          cars={cars.toSorted((a, b) => a.name.localeCompare(b.name, 'en'))}
          title="The log"
        />
      </Page>
    </HydrationBoundary>
  );
}
