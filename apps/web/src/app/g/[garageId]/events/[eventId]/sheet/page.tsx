import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { EventSheetScreen } from '../../../../../../event-sheet/EventSheetScreen.tsx';
import { Page } from '../../../../../../frame/Page.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';

type SheetProps = { params: Promise<{ garageId: string; eventId: string }> };

async function found({ params }: SheetProps) {
  const asked = await params;
  return orNotFound(pageCache().fetchQuery(ask().event.view.queryOptions(asked)));
}

export async function generateMetadata(props: SheetProps): Promise<Metadata> {
  return { title: `Sheet of ${(await found(props)).event.event.name}` };
}

export default async function Sheet(props: SheetProps) {
  const { garage, event } = await found(props);
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <EventSheetScreen garageId={garage.id} eventId={event.eventId} />
      </Page>
    </HydrationBoundary>
  );
}
