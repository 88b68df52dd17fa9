import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { Page } from '../../../../frame/Page.tsx';
import { OilComparedScreen } from '../../../../oil/OilComparedScreen.tsx';
import { oilPages } from '../../../../oil/oil-pages.ts';
import { answers, ask, orNotFound, pageCache } from '../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Oil compared' };

export default async function OilCompared({ params }: { params: Promise<{ garageId: string }> }) {
  const { garageId } = await params;
  await orNotFound(
    pageCache().fetchInfiniteQuery(ask().oil.compare.infiniteQueryOptions({ garageId }, oilPages)),
  );
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <OilComparedScreen garageId={garageId} />
      </Page>
    </HydrationBoundary>
  );
}
