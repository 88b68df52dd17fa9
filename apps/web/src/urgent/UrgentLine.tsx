'use client';

import type { UrgentCar } from '@quartermark/api/client';
import { useQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import Link from 'next/link';
import { useTRPC } from '../client/trpc.ts';
import { Button } from '../components/index.ts';
import { UrgentFacts } from './UrgentFacts.tsx';
import styles from './UrgentLine.module.css';

type UrgentLineProps = {
  garageId: string;
  /** as the server knows it; null: it could not be asked */
  known: UrgentCar[] | null;
  /** what this browser laid aside */
  painted: string;
};

/** At the head of every page of a garage: what forbids driving one of its cars, or may cost its engine. */
export function UrgentLine({ garageId, known, painted }: UrgentLineProps) {
  const trpc = useTRPC();
  const { data, isError, refetch } = useQuery({
    ...trpc.garage.urgent.queryOptions({ garageId }),
    ...(known === null ? {} : { initialData: known }),
  });
  return (
    <div aria-live="polite">
      {data ? (
        <UrgentFacts
          cars={data}
          painted={painted}
          nameOf={({ carId, name }) => (
            <Link href={`/g/${garageId}/car/${carId}` as Route} prefetch={false}>
              {name}
            </Link>
          )}
        />
      ) : isError ? (
        <p className={styles.unknown}>
          Whether a car must not be driven could not be asked just now.{' '}
          <Button look="quiet" onClick={() => void refetch()}>
            Ask again
          </Button>
        </p>
      ) : null}
    </div>
  );
}
