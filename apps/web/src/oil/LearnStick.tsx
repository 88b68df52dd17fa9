'use client';

import { learnSpan } from '@quartermark/engine/oil';
import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { Controller, useForm, useWatch } from 'react-hook-form';
import { useTRPC } from '../client/trpc.ts';
import { useAlive } from '../client/use-alive.ts';
import { ButtonLink, PageAnswer, QuantityField, TextField } from '../components/index.ts';
import { FormPair, FormSection } from '../forms/Form.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { Cautions } from '../record/Cautions.tsx';
import { cautionsFor } from '../record/cautions.ts';
import { NUMBER, VOLUME_UNITS } from '../record/parts.ts';
import styles from './LearnStick.module.css';
import { Learnt } from './Learnt.tsx';
import type { OilWhere } from './OilScreen.tsx';
import { emptyStick, readStick, type StickFields } from './stick-fields.ts';

/** Two readings around a measured bottle say how many litres lie between the marks. Nothing is stored unasked. */
export function LearnStick(where: OilWhere) {
  const trpc = useTRPC();
  const { data: view } = useSuspenseQuery(trpc.car.view.queryOptions(where));
  const { profile } = view.car;
  const alive = useAlive();
  const form = useForm<StickFields>({ defaultValues: emptyStick(view.garage.volumeUnit) });
  const forget = useDraft(`stick:${where.carId}`, form);
  const fields = { ...form.getValues(), ...useWatch({ control: form.control }) } as StickFields;
  const { problems, around, over } = readStick(fields);
  const learnt = around && learnSpan(around);
  const mm = (name: Exclude<keyof StickFields, 'poured'>, label: string, hint?: string) => (
    <TextField
      label={label}
      hint={hint}
      suffix="mm"
      {...NUMBER}
      error={problems[name]}
      {...form.register(name)}
    />
  );
  return (
    <>
      <PageAnswer
        about={`${view.car.name}: learn the stick`}
        beneath={
          profile.oilSpanL === undefined
            ? 'The litres between MIN and MAX are not on record; 1 L is assumed.'
            : `On record: ${profile.oilSpanL} L between MIN and MAX.`
        }
      >
        Read, pour in a measured bottle, wait, read again: that shows how many litres lie between
        the marks.
      </PageAnswer>
      <Cautions of={[...cautionsFor('oilTopUp', profile), LEVEL_GROUND]} />
      <form aria-label="Learn the stick" onSubmit={(event) => event.preventDefault()}>
        <fieldset disabled={!alive} className={styles.steps}>
          <FormSection title="1. The marks">
            <p>Lay a ruler beside the wiped stick.</p>
            {mm('marks', 'Between the lines of MIN and MAX')}
          </FormSection>
          <FormSection title="2. Read it twice, by the car’s own procedure">
            <p>
              Begin low enough that the bottle fits below MAX. Wipe the stick, push it home, read;
              then the same once more: how far the two lie apart shows how well it can be read.
            </p>
            <FormPair>
              {mm('before', 'Oil above MIN', 'Below MIN with a minus.')}
              {mm('beforeAgain', 'The same again')}
            </FormPair>
          </FormSection>
          <FormSection title="3. Pour in a measured bottle">
            <Controller
              control={form.control}
              name="poured"
              render={({ field: { value, onChange, onBlur, name } }) => (
                <QuantityField
                  label="Poured in"
                  hint="About half of what you think lies between the marks."
                  units={VOLUME_UNITS}
                  name={name}
                  value={value}
                  onChange={onChange}
                  onBlur={onBlur}
                  error={problems.poured}
                />
              )}
            />
          </FormSection>
          <FormSection title="4. Wait, then read it twice in the same way">
            <p>{waitWords(profile.dipstick, profile.sump === 'dry')}</p>
            <FormPair>
              {mm('after', 'Oil above MIN now')}
              {mm('afterAgain', 'The same again')}
            </FormPair>
          </FormSection>
        </fieldset>
      </form>
      <Learnt learnt={learnt} around={around} over={over} view={view} forget={forget} />
      <nav aria-label="This car" className={styles.ways}>
        <ButtonLink href={`/g/${where.garageId}/car/${where.carId}/oil` as Route} look="quiet">
          To the car’s oil
        </ButtonLink>
      </nav>
    </>
  );
}

const LEVEL_GROUND = 'Level ground, and the car in the same place for all readings.';

type Dipstick = { state: 'hotIdle' | 'hotStopped' | 'cold'; minutesAfterStop?: number | undefined };

/** How oil that was poured in gets to where the stick can see it. Common practice, no source. */
function waitWords(dipstick: Dipstick | undefined, drySump: boolean): string {
  const state = dipstick?.state ?? (drySump ? 'hotIdle' : null);
  switch (state) {
    case 'hotIdle':
      return 'Let the engine idle some minutes more, so that the new oil is in the round, and read it idling as before.';
    case 'hotStopped':
      return `Run the engine warm again, stop it, wait ${dipstick?.minutesAfterStop ?? 'some'} minutes, and read as before.`;
    case 'cold':
      return 'Wait until the new oil has run down, a quarter of an hour or more, and read as before without starting it.';
    case null:
      return 'Wait until the new oil has run down, and read just as before: same heat, same minutes.';
  }
}
