import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { Page } from '../../../../../frame/Page.tsx';
import { carsOfFacts } from '../../../../../letters/put-off/fact-words.ts';
import { PutOffScreen } from '../../../../../letters/put-off/PutOffScreen.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../server/ask.ts';
import { every, one, type SaidInAddress } from '../../../../../server/said-in-address.ts';

export const metadata: Metadata = { title: 'Put off' };

type PutOffProps = {
  params: Promise<{ garageId: string }>;
  searchParams: Promise<Record<string, SaidInAddress>>;
};

/** Opening it writes nothing: what the address names is proposed, and a press puts it off. */
export default async function PutOff({ params, searchParams }: PutOffProps) {
  const { garageId } = await params;
  const { fact, until } = await searchParams;
  const facts = every(fact);
  const day = one(until);
  const { rows } = await orNotFound(
    pageCache().fetchQuery(ask().putOff.list.queryOptions({ garageId })),
  );
  // names come with the page; those of what has left are told by the page itself
  const named = [...facts, ...rows.map((row) => row.fact)];
  await Promise.all([
    pageCache().prefetchQuery(ask().event.list.queryOptions({ garageId })),
    ...carsOfFacts(named).map((carId) =>
      pageCache().prefetchQuery(ask().car.view.queryOptions({ garageId, carId })),
    ),
  ]);
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PutOffScreen
          garageId={garageId}
          facts={facts}
          until={day !== null && /^\d{4}-\d{2}-\d{2}$/.test(day) ? day : null}
        />
      </Page>
    </HydrationBoundary>
  );
}
