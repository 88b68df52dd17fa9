'use client';

import { useInfiniteQuery } from '@tanstack/react-query';
import { refusalWords } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { useMorePages } from '../client/use-more-pages.ts';
import { Button, Choice, Notice, Skeleton } from '../components/index.ts';
import { overviewPages } from '../garage/overview-pages.ts';

type CarChoiceProps = {
  garageId: string;
  value: string;
  onChange: (carId: string) => void;
  error: string | undefined;
};

/** One of the garage's cars. */
export function CarChoice({ garageId, value, onChange, error }: CarChoiceProps) {
  const trpc = useTRPC();
  const overview = useInfiniteQuery(
    trpc.garage.overview.infiniteQueryOptions({ garageId }, overviewPages),
  );
  const { more, busy } = useMorePages(overview);
  if (overview.isPending) return <Skeleton of="the cars" rows={3} />;
  const cars = overview.data?.pages.flatMap(({ rows }) => rows) ?? [];
  return (
    <>
      <Choice
        label="Which car"
        size="small"
        layout="stack"
        options={cars.map(({ carId, name }) => ({ value: carId, words: name }))}
        value={value === '' ? null : value}
        onChange={onChange}
        error={error}
      />
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
