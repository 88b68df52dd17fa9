'use client';

import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useForm, useWatch } from 'react-hook-form';
import { useTRPC } from '../client/trpc.ts';
import { useAlive } from '../client/use-alive.ts';
import { ButtonLink, PageAnswer } from '../components/index.ts';
import { FormSection } from '../forms/Form.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { AirOfDay } from './AirOfDay.tsx';
import styles from './AirScreen.module.css';
import { type AirPageFields, emptyAirPage, type Problems, readAir } from './air-fields.ts';
import { ColdPressure } from './ColdPressure.tsx';
import { DensityAltitude } from './DensityAltitude.tsx';
import { OtherDay } from './OtherDay.tsx';

type AirScreenProps = {
  garageId: string;
  /** that can be chosen, by name */
  cars: readonly { carId: string; name: string }[];
};

/** Sums for the day: how thin the air is, what a time of another day is worth, what to pump cold. Nothing is stored. */
export function AirScreen({ garageId, cars }: AirScreenProps) {
  const trpc = useTRPC();
  const { data: garages } = useSuspenseQuery(trpc.garage.mine.queryOptions());
  const unit = garages.find(({ id }) => id === garageId)?.distanceUnit ?? 'km';
  const alive = useAlive();
  const form = useForm<AirPageFields>({ defaultValues: emptyAirPage(unit === 'mi') });
  useDraft(`air:${garageId}`, form);
  const fields = { ...form.getValues(), ...useWatch({ control: form.control }) } as AirPageFields;
  const problems: Problems = {};
  const today = readAir(fields.today, 'today', problems);
  const part = { form, fields, problems };
  return (
    <>
      <PageAnswer about="Air and pressures">
        Type in what the barometer shows: how thin the air is, what a time of another day would be
        in it, and what to pump cold.
      </PageAnswer>
      <form aria-label="Air and pressures" onSubmit={(event) => event.preventDefault()}>
        <fieldset disabled={!alive} className={styles.parts}>
          <FormSection title="The air today">
            <AirOfDay form={form} day="today" problems={problems} />
            <DensityAltitude air={today} unit={unit} />
          </FormSection>
          <FormSection title="A drag-strip time of another day">
            <OtherDay {...part} today={today} />
          </FormSection>
          <FormSection title="Tyres: pump cold for a wanted hot pressure">
            <ColdPressure {...part} garageId={garageId} cars={cars} />
          </FormSection>
        </fieldset>
      </form>
      <nav aria-label="This garage" className={styles.ways}>
        <ButtonLink href={`/g/${garageId}/events` as Route} look="quiet">
          To the events
        </ButtonLink>
      </nav>
    </>
  );
}
