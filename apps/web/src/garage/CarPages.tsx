'use client';

import { useInfiniteQuery } from '@tanstack/react-query';
import { refusalWords } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { useMorePages } from '../client/use-more-pages.ts';
import { Button, Notice } from '../components/index.ts';
import { overviewPages } from './overview-pages.ts';

/** The garage's cars, page by page, for a field that chooses among them. `MoreCars` stands beneath it. */
export function useCarPages(garageId: string) {
  const trpc = useTRPC();
  const overview = useInfiniteQuery(
    trpc.garage.overview.infiniteQueryOptions({ garageId }, overviewPages),
  );
  return { overview, cars: overview.data?.pages.flatMap(({ rows }) => rows) ?? [] };
}

type MoreCarsProps = Pick<ReturnType<typeof useCarPages>, 'overview'>;

/** What went wrong with fetching cars, and the press for the next page of them. */
export function MoreCars({ overview }: MoreCarsProps) {
  const { more, busy } = useMorePages(overview);
  return (
    <>
      {overview.isError ? (
        <Notice
          tone="alarm"
          title="The cars could not be fetched."
          actions={<Button onClick={() => void overview.refetch()}>Try again</Button>}
        >
          {refusalWords(overview.error).message}
        </Notice>
      ) : null}
      {overview.hasNextPage ? (
        <Button onClick={more} busy={busy} busyWords="Fetching more cars …">
          Show more cars
        </Button>
      ) : null}
    </>
  );
}
