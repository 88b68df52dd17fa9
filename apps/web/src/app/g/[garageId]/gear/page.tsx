import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { Page } from '../../../../frame/Page.tsx';
import { GearScreen } from '../../../../gear/GearScreen.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Sets, tools and people' };

type GearProps = { params: Promise<{ garageId: string }> };

export default async function Gear({ params }: GearProps) {
  const { garageId } = await params;
  await orNotFound(pageCache().fetchQuery(ask().gear.list.queryOptions({ garageId })));
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <GearScreen garageId={garageId} />
      </Page>
    </HydrationBoundary>
  );
}
