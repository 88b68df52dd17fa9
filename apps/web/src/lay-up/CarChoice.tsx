'use client';

import { Choice, Skeleton } from '../components/index.ts';
import { MoreCars, useCarPages } from '../garage/CarPages.tsx';

type CarChoiceProps = {
  garageId: string;
  value: string;
  onChange: (carId: string) => void;
  error: string | undefined;
};

/** One of the garage's cars. */
export function CarChoice({ garageId, value, onChange, error }: CarChoiceProps) {
  const { overview, cars } = useCarPages(garageId);
  if (overview.isPending) return <Skeleton of="the cars" rows={3} />;
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
      <MoreCars overview={overview} />
    </>
  );
}
