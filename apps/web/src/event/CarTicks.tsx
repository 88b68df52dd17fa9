'use client';

import { refusalWords } from '../client/refusal-words.ts';
import { useMorePages } from '../client/use-more-pages.ts';
import { Button, Notice, Skeleton, Tick } from '../components/index.ts';
import { useListedCars } from './use-listed-cars.ts';

type CarTicksProps = {
  garageId: string;
  /** names of cars that may be chosen already and stand on a later page */
  names: Readonly<Record<string, string>>;
  chosen: readonly string[];
  onChange: (chosen: string[]) => void;
};

/** Several of the garage's cars; what is chosen stays in sight however many pages there are. */
export function CarTicks({ garageId, names, chosen, onChange }: CarTicksProps) {
  const { overview, cars } = useListedCars(garageId);
  const { more, busy } = useMorePages(overview);
  const known = new Map([
    ...chosen.map((id) => [id, names[id] ?? 'a car of this garage'] as const),
    ...[...cars].map(([id, { name }]) => [id, name] as const),
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
    </div>
  );
}
