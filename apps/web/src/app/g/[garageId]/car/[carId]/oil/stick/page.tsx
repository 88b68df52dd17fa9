import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { Page } from '../../../../../../../frame/Page.tsx';
import { LearnStick } from '../../../../../../../oil/LearnStick.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Learn the stick' };

type StickPageProps = { params: Promise<{ garageId: string; carId: string }> };

export default async function StickPage({ params }: StickPageProps) {
  const where = await params;
  await orNotFound(pageCache().fetchQuery(ask().car.view.queryOptions(where)));
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <LearnStick {...where} />
      </Page>
    </HydrationBoundary>
  );
}
