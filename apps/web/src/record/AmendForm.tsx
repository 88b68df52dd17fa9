'use client';

import type { EntryView } from '@quartermark/api/client';
import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { useTRPC } from '../client/trpc.ts';
import { type About, aboutGarage, aboutGear } from './about.ts';
import { type AboutWhat, aboutWhat, pageOf } from './about-what.ts';
import { EntryForm } from './EntryForm.tsx';
import { fieldsOf } from './record-fields.ts';
import type { Start } from './start.ts';
import { useAboutCar } from './use-about-car.ts';

type AmendFormProps = {
  garageId: string;
  entryId: string;
  of: AboutWhat;
};

/** Puts an entry right, its fields filled exactly as they were typed. */
export function AmendForm({ garageId, entryId, of }: AmendFormProps) {
  const trpc = useTRPC();
  const { data: standing } = useSuspenseQuery(trpc.entry.one.queryOptions({ garageId, entryId }));
  if (of === null) return <OfGarage garageId={garageId} standing={standing} />;
  return 'carId' in of ? (
    <OfCar garageId={garageId} carId={of.carId} standing={standing} />
  ) : (
    <OfGear garageId={garageId} gearId={of.gearId} standing={standing} />
  );
}

type Of<I> = I & { garageId: string; standing: EntryView };

function OfCar({ garageId, carId, standing }: Of<{ carId: string }>) {
  const about = useAboutCar({ garageId, carId });
  return <Amend about={about} standing={standing} />;
}

function OfGear({ garageId, gearId, standing }: Of<{ gearId: string }>) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.gear.view.queryOptions({ garageId, gearId }));
  const about = aboutGear(data.garage, data.row);
  return <Amend about={about} standing={standing} />;
}

function OfGarage({ garageId, standing }: Of<object>) {
  const trpc = useTRPC();
  const { data: garages } = useSuspenseQuery(trpc.garage.mine.queryOptions());
  const garage = garages.find(({ id }) => id === garageId);
  if (!garage) throw new Error(`could not open the form: garage ${garageId} is not yours`);
  return <Amend about={aboutGarage(garage)} standing={standing} />;
}

type AmendProps = { about: About; standing: EntryView };

function Amend({ about, standing }: AmendProps) {
  const router = useRouter();
  const at = `/g/${about.garage.id}`;
  // what the form was opened with: it stays the same while the page is kept up to date
  const [opened] = useState(standing);
  const { entry, revision } = opened;
  const [start] = useState<Start>(() => ({
    entryId: entry.id,
    today: about.garage.today,
    unit: about.unit,
    volumeUnit: about.garage.volumeUnit,
    last: null,
  }));
  return (
    <EntryForm
      about={about}
      kind={entry.kind}
      base={entry}
      start={start}
      initial={fieldsOf(entry, revision, start)}
      draft={`entry:${entry.id}`}
      last={null}
      onDone={() => router.push(`${at}${pageOf(aboutWhat(entry))}` as Route)}
      onLeave={() => router.push(`${at}/entry/${entry.id}` as Route)}
    />
  );
}
