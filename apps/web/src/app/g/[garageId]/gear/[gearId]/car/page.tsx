import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { Page } from '../../../../../../frame/Page.tsx';
import { overviewPages } from '../../../../../../garage/overview-pages.ts';
import { ChooseCarFor } from '../../../../../../gear/ChooseCarFor.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Which car' };

type WhichCarProps = {
  params: Promise<{ garageId: string; gearId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export default async function WhichCar({ params, searchParams }: WhichCarProps) {
  const where = await params;
  const { garageId } = where;
  const { for: what } = await searchParams;
  await orNotFound(
    Promise.all([
      pageCache().fetchQuery(ask().gear.view.queryOptions(where)),
      pageCache().fetchInfiniteQuery(
        ask().garage.overview.infiniteQueryOptions({ garageId }, overviewPages),
      ),
    ]),
  );
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <ChooseCarFor {...where} what={what === 'measure' ? 'measure' : 'fit'} />
      </Page>
    </HydrationBoundary>
  );
}
