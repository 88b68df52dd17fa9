'use client';

import { QuantityField, Tick } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import styles from './Crew.module.css';
import type { TravelFields } from './going-fields.ts';

const UNITS = [
  { value: 'km', words: 'km' },
  { value: 'mi', words: 'miles' },
] as const;

type TravelProps = {
  /** those that go, by their names */
  cars: readonly { id: string; name: string }[];
  travel: TravelFields;
  onChange: (travel: TravelFields) => void;
  error: string | undefined;
  /** what stands there, in a few words */
  now: string;
};

/** How the cars get there and home again. */
export function Travel({ cars, travel, onChange, error, now }: TravelProps) {
  const { distance: text, unit, trailered } = travel;
  return (
    <Fold title="The way there" now={now} wrong={error !== undefined}>
      <QuantityField
        label="Distance, one way"
        hint="Driven cars use it up twice, there and home: limits are judged when they are back."
        optional
        name="travel.distance"
        units={UNITS}
        value={{ text, unit }}
        onChange={(typed) => onChange({ ...travel, distance: typed.text, unit: typed.unit })}
        error={error}
      />
      <fieldset className={styles.people}>
        <legend>On a trailer</legend>
        {cars.length === 0 ? <p>Tick the cars that go first.</p> : null}
        {cars.map(({ id, name }) => (
          <Tick
            key={id}
            label={name}
            checked={trailered.includes(id)}
            onChange={(on) =>
              onChange({
                ...travel,
                trailered: on ? [...trailered, id] : trailered.filter((one) => one !== id),
              })
            }
          />
        ))}
      </fieldset>
      {cars.length > 0 ? <p>Cars that are not ticked are driven.</p> : null}
    </Fold>
  );
}
