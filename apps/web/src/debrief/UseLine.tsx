'use client';

import { formatDay } from '@quartermark/engine/display';
import type { EventSort } from '@quartermark/engine/log';
import { QuantityField, TextField } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import { FormPair } from '../forms/Form.tsx';
import { DISTANCE_UNITS, errorAt } from '../record/parts.ts';
import { type CarDebriefProps, errorsAt } from './car-debrief-props.ts';
import styles from './Debrief.module.css';
import { noUse } from './debrief-fields.ts';
import { USE_KIND } from './expected-use.ts';
import { PartFoot } from './PartFoot.tsx';
import { partKey } from './part-key.ts';
import { shownUse } from './shown-use.ts';

const COUNT_LABEL: Readonly<Record<EventSort, string>> = {
  circuit: 'Sessions',
  autocross: 'Sessions',
  dragStrip: 'Passes',
  roadTrip: '',
  meet: '',
};
const COUNT_HINT: Readonly<Record<EventSort, string>> = {
  circuit: 'Beyond what is on record. One is a stint, often 20 minutes.',
  autocross: 'Beyond what is on record. One day’s runs count as one.',
  dragStrip: 'Beyond what is on record. Every pass is a start under full power.',
  roadTrip: '',
  meet: '',
};

/** What a car did on one day, or on a whole trip. */
export function UseLine(props: CarDebriefProps & { on: string; dated: boolean }) {
  const { page, car, fields, onChange, on, dated } = props;
  const { event } = page.event;
  const kind = USE_KIND[event.sort];
  const recorded = car.recorded.map(({ entry }) => entry);
  const shown = shownUse(fields, on, { event, recorded });
  const key = partKey.use(car.carId, on);
  const errors = errorsAt(props, key);
  const set = (changed: Partial<typeof shown>) =>
    onChange({ uses: { ...fields.uses, [on]: { ...(fields.uses[on] ?? noUse()), ...changed } } });
  const distance = (
    <QuantityField
      label="Distance"
      optional
      name={`${key}:distance`}
      units={DISTANCE_UNITS}
      value={{ text: shown.distance ?? '', unit: fields.unit }}
      onChange={({ text, unit }) =>
        onChange({
          unit,
          uses: { ...fields.uses, [on]: { ...(fields.uses[on] ?? noUse()), distance: text } },
        })
      }
      error={errorAt(errors, 'distance')}
    />
  );
  return (
    <fieldset className={styles.line}>
      <legend>{dated ? formatDay(on) : 'What it did'}</legend>
      {kind === 'drive' ? (
        distance
      ) : (
        <TextField
          label={COUNT_LABEL[event.sort]}
          hint={COUNT_HINT[event.sort]}
          figures
          inputMode="numeric"
          autoComplete="off"
          name={`${key}:count`}
          value={shown.count ?? ''}
          onChange={(typed) => set({ count: typed.currentTarget.value })}
          error={errors['entry.sessions'] ?? errors['entry.passes']}
        />
      )}
      {kind === 'session' ? (
        <Fold
          title="Distance and hours"
          now={isSaid(shown.distance, shown.hours) ? 'filled in' : undefined}
          wrong={errorAt(errors, 'distance') !== undefined || 'entry.hours' in errors}
        >
          <FormPair>
            {distance}
            <TextField
              label="Hours of running"
              optional
              suffix="h"
              figures
              inputMode="decimal"
              autoComplete="off"
              name={`${key}:hours`}
              value={shown.hours}
              onChange={(typed) => set({ hours: typed.currentTarget.value })}
              error={errors['entry.hours']}
            />
          </FormPair>
        </Fold>
      ) : null}
      <PartFoot {...props} partKey={key} />
    </fieldset>
  );
}

const isSaid = (...texts: readonly (string | null)[]) =>
  texts.some((text) => text !== null && text.trim() !== '');
