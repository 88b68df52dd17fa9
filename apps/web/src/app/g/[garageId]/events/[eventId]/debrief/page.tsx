import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { DebriefScreen } from '../../../../../../debrief/DebriefScreen.tsx';
import { Page } from '../../../../../../frame/Page.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Debrief' };

type DebriefProps = { params: Promise<{ garageId: string; eventId: string }> };

export default async function Debrief({ params }: DebriefProps) {
  const { garageId, eventId } = await params;
  await orNotFound(pageCache().fetchQuery(ask().event.view.queryOptions({ garageId, eventId })));
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <DebriefScreen garageId={garageId} eventId={eventId} />
      </Page>
    </HydrationBoundary>
  );
}
