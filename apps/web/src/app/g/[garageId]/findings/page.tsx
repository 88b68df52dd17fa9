import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { FindingsScreen } from '../../../../finding/FindingsScreen.tsx';
import { Page } from '../../../../frame/Page.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Findings' };

type FindingsProps = { params: Promise<{ garageId: string }> };

export default async function Findings({ params }: FindingsProps) {
  const { garageId } = await params;
  await orNotFound(pageCache().fetchQuery(ask().finding.open.queryOptions({ garageId })));
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <FindingsScreen garageId={garageId} />
      </Page>
    </HydrationBoundary>
  );
}
