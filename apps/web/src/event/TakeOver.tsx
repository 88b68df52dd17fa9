'use client';

import type { EventView, GarageView } from '@quartermark/api/client';
import { listWords } from '@quartermark/engine/display';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { UseFormReturn } from 'react-hook-form';
import { useTRPC } from '../client/trpc.ts';
import { SelectField } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import type { Person } from './Crew.tsx';
import type { EventFields } from './event-fields.ts';
import { EVENT_NAME, spanWords } from './event-words.ts';
import { type TakenOver, takeOver } from './take-over.ts';
import { useListedCars } from './use-listed-cars.ts';

type TakeOverProps = {
  garage: GarageView;
  form: UseFormReturn<EventFields>;
  /** names of cars, by id */
  names: Readonly<Record<string, string>>;
  people: readonly Person[];
};

/** Fills the form in from an event that is over, a year later; nothing is shown where none is. */
export function TakeOver({ garage, form, names, people }: TakeOverProps) {
  const trpc = useTRPC();
  const { data } = useQuery(trpc.event.former.queryOptions({ garageId: garage.id }));
  const { cars, overview } = useListedCars(garage.id);
  const [chosen, setChosen] = useState('');
  const [said, setSaid] = useState('');
  if (!data || data.events.length === 0) return null;
  const carName = (id: string) => cars.get(id)?.name ?? names[id] ?? 'a car';

  function choose(eventId: string) {
    setChosen(eventId);
    const former = data?.events.find((one) => one.eventId === eventId);
    if (!former) return setSaid('');
    const taken = takeOver(former.event, {
      today: garage.today,
      unit: garage.distanceUnit,
      // on a later page it may still be here
      hasLeft: (id) => cars.get(id)?.sold ?? (overview.isSuccess && !overview.hasNextPage),
      isHere: (id) => people.some(({ gearId }) => gearId === id),
    });
    for (const [name, value] of Object.entries(taken.fields))
      form.setValue(name as keyof EventFields, value, { shouldDirty: true });
    setSaid(takenWords(former, taken, carName));
  }

  return (
    <Fold title="Take over a former one">
      <SelectField
        label="Which one"
        hint="Everything it said is filled in, with its days moved to a year later."
        name="former"
        options={[{ value: '', words: 'Choose one' }, ...data.events.map(optionOf)]}
        value={chosen}
        onChange={(event) => choose(event.currentTarget.value)}
      />
      <p aria-live="polite">{said}</p>
    </Fold>
  );
}

const optionOf = ({ eventId, event }: EventView) => ({
  value: eventId,
  words: `${event.name}, ${spanWords(event)} (${EVENT_NAME[event.sort].toLowerCase()})`,
});

function daysWords({ start, end }: EventFields): string {
  return spanWords(end === '' ? { start } : { start, end });
}

function takenWords(
  { event }: EventView,
  { fields, left, asksDays }: TakenOver,
  carName: (id: string) => string,
): string {
  const gone = left.map(carName);
  return [
    asksDays
      ? `${event.name} is filled in. A year later is over as well: choose its days.`
      : `${event.name} is filled in, on ${daysWords(fields)}.`,
    gone.length === 0 ? '' : `Left out: ${listWords(gone)}, no longer in the garage.`,
  ]
    .filter((part) => part !== '')
    .join(' ');
}
