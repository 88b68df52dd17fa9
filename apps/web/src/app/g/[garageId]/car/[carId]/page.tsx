import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { CarScreen } from '../../../../../car/CarScreen.tsx';
import { flaggedEntries } from '../../../../../car/flagged-entries.ts';
import { historyQuestion, readFilter } from '../../../../../car/history-filter.ts';
import { historyPages } from '../../../../../car/history-pages.ts';
import { Page } from '../../../../../frame/Page.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../server/ask.ts';

type CarPageProps = {
  params: Promise<{ garageId: string; carId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export async function generateMetadata({ params }: CarPageProps): Promise<Metadata> {
  const where = await params;
  const { car } = await orNotFound(pageCache().fetchQuery(ask().car.view.queryOptions(where)));
  return { title: car.name };
}

export default async function CarPage({ params, searchParams }: CarPageProps) {
  const { garageId, carId } = await params;
  const filter = readFilter(await searchParams);
  const question = historyQuestion({ garageId, carId }, filter);
  const [{ analysis }] = await orNotFound(
    Promise.all([
      pageCache().fetchQuery(ask().car.view.queryOptions({ garageId, carId })),
      pageCache().fetchInfiniteQuery(
        ask().entry.history.infiniteQueryOptions(question, historyPages),
      ),
    ]),
  );
  const entryIds = flaggedEntries(analysis);
  if (entryIds.length > 0)
    await pageCache().fetchQuery(ask().entry.some.queryOptions({ garageId, entryIds }));
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <CarScreen garageId={garageId} carId={carId} filter={filter} />
      </Page>
    </HydrationBoundary>
  );
}
