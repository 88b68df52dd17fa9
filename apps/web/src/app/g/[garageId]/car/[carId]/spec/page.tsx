import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { Page } from '../../../../../../frame/Page.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';
import { SpecScreen } from '../../../../../../spec/SpecScreen.tsx';

export const metadata: Metadata = { title: 'Spec sheet' };

type SpecProps = { params: Promise<{ garageId: string; carId: string }> };

export default async function Spec({ params }: SpecProps) {
  const where = await params;
  await orNotFound(
    Promise.all([
      pageCache().fetchQuery(ask().car.view.queryOptions(where)),
      pageCache().fetchQuery(ask().spec.view.queryOptions(where)),
    ]),
  );
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <SpecScreen {...where} />
      </Page>
    </HydrationBoundary>
  );
}
