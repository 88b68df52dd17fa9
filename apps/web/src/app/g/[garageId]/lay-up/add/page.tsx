import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { PageAnswer } from '../../../../../components/index.ts';
import { Page } from '../../../../../frame/Page.tsx';
import { overviewPages } from '../../../../../garage/overview-pages.ts';
import { PlanLayUpForm } from '../../../../../lay-up/PlanLayUpForm.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Plan a lay-up' };

type PlanLayUpProps = {
  params: Promise<{ garageId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export default async function PlanLayUp({ params, searchParams }: PlanLayUpProps) {
  const { garageId } = await params;
  const { car: carId } = await searchParams;
  const of = typeof carId === 'string' ? carId : null;
  const about = of === null ? await fromCalendar(garageId) : await fromCar(garageId, of);
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer about={about}>When is it to be laid up?</PageAnswer>
        <PlanLayUpForm garageId={garageId} carId={of} />
      </Page>
    </HydrationBoundary>
  );
}

/** The form lets a car be chosen. */
async function fromCalendar(garageId: string): Promise<string> {
  await orNotFound(
    pageCache().fetchInfiniteQuery(
      ask().garage.overview.infiniteQueryOptions({ garageId }, overviewPages),
    ),
  );
  return 'Plan a lay-up';
}

async function fromCar(garageId: string, carId: string): Promise<string> {
  const { car } = await orNotFound(
    pageCache().fetchQuery(ask().car.view.queryOptions({ garageId, carId })),
  );
  return `${car.name}: plan a lay-up`;
}
