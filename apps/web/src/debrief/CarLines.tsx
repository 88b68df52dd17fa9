'use client';

import { formatDay, typedWords } from '@quartermark/engine/display';
import { useQuery } from '@tanstack/react-query';
import { useTRPC } from '../client/trpc.ts';
import { QuantityField } from '../components/index.ts';
import { DISTANCE_UNITS, errorAt, VOLUME_UNITS } from '../record/parts.ts';
import { ZoneChoice } from '../record/Zones.tsx';
import { type CarDebriefProps, errorsAt } from './car-debrief-props.ts';
import styles from './Debrief.module.css';
import { daysOfUse } from './expected-use.ts';
import { Findings } from './Findings.tsx';
import { Measured } from './Measured.tsx';
import { PartFoot } from './PartFoot.tsx';
import { partKey } from './part-key.ts';
import { UseLine } from './UseLine.tsx';

/** Everything that can be written down of a car after an event; any of it may stay empty. */
export function CarLines(props: CarDebriefProps) {
  const { page, car, saved } = props;
  const { event } = page.event;
  const open = (key: string) => saved[key] === undefined;
  const days = daysOfUse(event, page.garage.today).filter((on) => open(partKey.use(car.carId, on)));
  return (
    <>
      {days.map((on) => (
        <UseLine key={on} {...props} on={on} dated={days.length > 1} />
      ))}
      {open(partKey.oil(car.carId)) ? <Oil {...props} /> : null}
      {open(partKey.odometer(car.carId)) ? <Odometer {...props} /> : null}
      <Measured {...props} />
      <Findings {...props} />
    </>
  );
}

function Oil(props: CarDebriefProps) {
  const { car, fields, onChange } = props;
  const key = partKey.oil(car.carId);
  const errors = errorsAt(props, key);
  return (
    <fieldset className={styles.line}>
      <legend>Oil</legend>
      <QuantityField
        label="Oil added there"
        hint="All of it together."
        optional
        name={`${key}:added`}
        units={VOLUME_UNITS}
        value={fields.added}
        onChange={(added) => onChange({ added })}
        error={errorAt(errors, 'volume')}
      />
      <ZoneChoice
        label="Level when it was over"
        optional
        value={fields.level}
        onChange={(level) => onChange({ level })}
        error={errorAt(errors, 'level') ?? errorAt(errors, 'levelAfter')}
      />
      <p>
        After what was added, read by the car’s own procedure; a dry sump is read as its manual
        says.
      </p>
      <PartFoot {...props} partKey={key} />
    </fieldset>
  );
}

function Odometer(props: CarDebriefProps) {
  const { page, car, fields, onChange } = props;
  const trpc = useTRPC();
  const where = { garageId: page.garage.id, carId: car.carId };
  const { data: last } = useQuery(trpc.car.lastValues.queryOptions(where));
  const key = partKey.odometer(car.carId);
  const before = last?.odometer;
  return (
    <fieldset className={styles.line}>
      <legend>Odometer</legend>
      <QuantityField
        label="When it was over"
        {...(before ? { hint: `Last: ${typedWords(before)}, ${formatDay(before.on)}.` } : {})}
        optional
        name={`${key}:odometer`}
        units={DISTANCE_UNITS}
        value={fields.odometer}
        onChange={(odometer) => onChange({ odometer })}
        error={errorAt(errorsAt(props, key), 'odometer')}
      />
      <PartFoot {...props} partKey={key} />
    </fieldset>
  );
}
