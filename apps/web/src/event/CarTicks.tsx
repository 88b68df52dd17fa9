'use client';

import { Skeleton, Tick } from '../components/index.ts';
import { MoreCars, useCarPages } from '../garage/CarPages.tsx';

type CarTicksProps = {
  garageId: string;
  /** names of cars that may be chosen already and stand on a later page */
  names: Readonly<Record<string, string>>;
  chosen: readonly string[];
  onChange: (chosen: string[]) => void;
};

/** Several of the garage's cars; what is chosen stays in sight however many pages there are. */
export function CarTicks({ garageId, names, chosen, onChange }: CarTicksProps) {
  const { overview, cars } = useCarPages(garageId);
  const known = new Map([
    ...chosen.map((id) => [id, names[id] ?? 'a car of this garage'] as const),
    ...cars.map(({ carId, name }) => [carId, name] as const),
  ]);
  const turn = (id: string, on: boolean) =>
    onChange(on ? [...chosen, id] : chosen.filter((one) => one !== id));
  if (overview.isPending) return <Skeleton of="the cars" rows={3} />;
  return (
    <div>
      {known.size === 0 ? <p>There is no car yet.</p> : null}
      {[...known].map(([id, name]) => (
        <Tick key={id} label={name} checked={chosen.includes(id)} onChange={(on) => turn(id, on)} />
      ))}
      <MoreCars overview={overview} />
    </div>
  );
}
