import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { historyPages } from '../../../../../car/history-pages.ts';
import { Page } from '../../../../../frame/Page.tsx';
import { PieceScreen } from '../../../../../gear/PieceScreen.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../server/ask.ts';

type PieceProps = { params: Promise<{ garageId: string; gearId: string }> };

export async function generateMetadata({ params }: PieceProps): Promise<Metadata> {
  const where = await params;
  const { row } = await orNotFound(pageCache().fetchQuery(ask().gear.view.queryOptions(where)));
  return { title: row.gear.name };
}

export default async function Piece({ params }: PieceProps) {
  const where = await params;
  await orNotFound(
    Promise.all([
      pageCache().fetchQuery(ask().gear.view.queryOptions(where)),
      pageCache().fetchInfiniteQuery(ask().entry.history.infiniteQueryOptions(where, historyPages)),
    ]),
  );
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <PieceScreen {...where} />
      </Page>
    </HydrationBoundary>
  );
}
