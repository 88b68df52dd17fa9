'use client';

import { useCarPages } from '../garage/CarPages.tsx';

/**
 * The garage's cars as far as their pages have come, by their id.
 *
 * @returns the pages' query, to have more of them, and the cars: `sold` as far as it is worked out
 */
export function useListedCars(garageId: string) {
  const { overview, cars: rows } = useCarPages(garageId);
  const cars = new Map(
    rows.map(({ carId, name, lane }) => [carId, { name, sold: lane?.status === 'sold' }] as const),
  );
  return { overview, cars };
}
