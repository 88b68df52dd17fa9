import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { EventDayScreen } from '../../../../../event-day/EventDayScreen.tsx';
import { Page } from '../../../../../frame/Page.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../server/ask.ts';

type EventProps = {
  params: Promise<{ garageId: string; eventId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

async function found({ params }: EventProps) {
  return orNotFound(pageCache().fetchQuery(ask().event.view.queryOptions(await params)));
}

export async function generateMetadata(props: EventProps): Promise<Metadata> {
  return { title: (await found(props)).event.event.name };
}

export default async function EventDay(props: EventProps) {
  await found(props);
  const { car } = await props.searchParams;
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <EventDayScreen {...(await props.params)} carId={typeof car === 'string' ? car : null} />
      </Page>
    </HydrationBoundary>
  );
}
