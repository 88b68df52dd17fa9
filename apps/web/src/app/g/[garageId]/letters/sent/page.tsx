import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { Page } from '../../../../../frame/Page.tsx';
import { letterPages } from '../../../../../letters/letter-pages.ts';
import { SentScreen } from '../../../../../letters/SentScreen.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../server/ask.ts';
import { ifAllowed } from '../../../../../server/if-allowed.ts';

export const metadata: Metadata = { title: 'What left the house' };

type SentProps = { params: Promise<{ garageId: string }> };

export default async function Sent({ params }: SentProps) {
  const { garageId } = await params;
  const sent = await orNotFound(
    ifAllowed(
      pageCache().fetchInfiniteQuery(
        ask().letter.sent.infiniteQueryOptions({ garageId }, letterPages),
      ),
    ),
  );
  // kept by owner and admin
  if (sent === null) notFound();
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <SentScreen garageId={garageId} />
      </Page>
    </HydrationBoundary>
  );
}
