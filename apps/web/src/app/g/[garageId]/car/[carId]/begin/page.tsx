import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { Page } from '../../../../../../frame/Page.tsx';
import { BeginScreen } from '../../../../../../interview/BeginScreen.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Begin with the car' };

type BeginProps = { params: Promise<{ garageId: string; carId: string }> };

export default async function Begin({ params }: BeginProps) {
  const where = await params;
  await orNotFound(
    Promise.all([
      pageCache().fetchQuery(ask().car.view.queryOptions(where)),
      pageCache().fetchQuery(ask().car.lastValues.queryOptions(where)),
    ]),
  );
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <BeginScreen {...where} />
      </Page>
    </HydrationBoundary>
  );
}
