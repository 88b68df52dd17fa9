import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { Page } from '../../../../frame/Page.tsx';
import { SaidScreen } from '../../../../said/SaidScreen.tsx';
import { saidPages } from '../../../../said/said-pages.ts';
import { answers, ask, orNotFound, pageCache } from '../../../../server/ask.ts';

export const metadata: Metadata = { title: 'We said, it was' };

type SaidProps = {
  params: Promise<{ garageId: string }>;
  searchParams: Promise<{ car?: string | string[] }>;
};

export default async function Said({ params, searchParams }: SaidProps) {
  const { garageId } = await params;
  const { car } = await searchParams;
  const carId = typeof car === 'string' ? car : undefined;
  const { pages } = await orNotFound(
    pageCache().fetchInfiniteQuery(
      ask().said.list.infiniteQueryOptions({ garageId, carId }, saidPages),
    ),
  );
  // a car that is not here, or not here any more
  if (carId !== undefined && pages[0]?.cars.length === 0) notFound();
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <SaidScreen garageId={garageId} carId={carId} />
      </Page>
    </HydrationBoundary>
  );
}
