import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { Page } from '../../../../../../frame/Page.tsx';
import { overviewPages } from '../../../../../../garage/overview-pages.ts';
import { ChooseCarFor } from '../../../../../../gear/ChooseCarFor.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Which car' };

type WhichCarProps = { params: Promise<{ garageId: string; gearId: string }> };

export default async function WhichCar({ params }: WhichCarProps) {
  const where = await params;
  const { garageId } = where;
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
        <ChooseCarFor {...where} />
      </Page>
    </HydrationBoundary>
  );
}
