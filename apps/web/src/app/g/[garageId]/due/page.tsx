import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { DueScreen } from '../../../../due/DueScreen.tsx';
import { DUE_PARTS, readDueFilter } from '../../../../due/due-filter.ts';
import { duePages, dueQuestion, soonQuestion } from '../../../../due/due-question.ts';
import { Page } from '../../../../frame/Page.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../server/ask.ts';
import { everyCar } from '../../../../server/every-car.ts';

export const metadata: Metadata = { title: 'What is due' };

type DueProps = {
  params: Promise<{ garageId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export default async function Due({ params, searchParams }: DueProps) {
  const { garageId } = await params;
  const garages = await pageCache().fetchQuery(ask().garage.mine.queryOptions());
  const garage = garages.find(({ id }) => id === garageId);
  if (!garage) notFound();
  const cars = (await everyCar(garageId)).map(({ carId, name }) => ({ carId, name }));
  const asked = readDueFilter(await searchParams);
  // a car that has left, or never was here, cannot be asked for
  const known = cars.some(({ carId }) => carId === asked.car);
  const filter = known ? asked : { ...asked, car: null };
  const list = ask().due.list;
  const questions = [
    soonQuestion(garageId, filter.car, garage.today),
    ...DUE_PARTS.map((part) => dueQuestion(garageId, filter, part)),
  ];
  await orNotFound(
    Promise.all(
      questions.map((question) =>
        pageCache().fetchInfiniteQuery(list.infiniteQueryOptions(question, duePages)),
      ),
    ),
  );
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <DueScreen
          garage={garage}
          filter={filter}
          cars={cars.toSorted((a, b) => a.name.localeCompare(b.name, 'en'))}
        />
      </Page>
    </HydrationBoundary>
  );
}
