import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { cookies } from 'next/headers';
import { Page } from '../../../frame/Page.tsx';
import { GarageScreen } from '../../../garage/GarageScreen.tsx';
import { overviewPages } from '../../../garage/overview-pages.ts';
import { lastCarCookie } from '../../../record/last-car.ts';
import { answers, ask, orNotFound, pageCache } from '../../../server/ask.ts';

export const metadata: Metadata = { title: 'Garage' };

type GaragePageProps = { params: Promise<{ garageId: string }> };

export default async function GaragePage({ params }: GaragePageProps) {
  const { garageId } = await params;
  await orNotFound(
    Promise.all([
      pageCache().fetchInfiniteQuery(
        ask().garage.overview.infiniteQueryOptions({ garageId }, overviewPages),
      ),
      pageCache().fetchQuery(ask().event.list.queryOptions({ garageId })),
    ]),
  );
  const lastCarId = (await cookies()).get(lastCarCookie(garageId))?.value ?? null;
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <GarageScreen garageId={garageId} lastCarId={lastCarId} />
      </Page>
    </HydrationBoundary>
  );
}
