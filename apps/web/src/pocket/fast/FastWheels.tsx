'use client';

import type { EntryOf, Torque } from '@quartermark/engine/log';
import { useState } from 'react';
import { Button, Choice, Stepper } from '../../components/index.ts';
import type { FastProps } from './begin.ts';
import styles from './Fast.module.css';
import { lastTorque, rememberTorque } from './last-torque.ts';
import { ShortCautions } from './ShortCautions.tsx';

const CORNERS = ['frontLeft', 'frontRight', 'rearLeft', 'rearRight'] as const;
/** Common practice, no source. */
const CARE = [
  'Tighten to the manual’s torque, in its order, and check again after a short drive.',
  'Never loosen hot fasteners.',
];
const UNITS = [
  { value: 'nm' as const, words: 'Nm' },
  { value: 'lbfFt' as const, words: 'lbf ft' },
];

/** All four at once; one press saves. */
export function FastWheels({ car, begin, save, busy }: FastProps) {
  const { carId } = car.view;
  const [before] = useState(() => lastTorque(carId) ?? onRecord(car));
  const [value, setValue] = useState<number | null>(before ? Number(before.text) : null);
  const [unit, setUnit] = useState<Torque['unit']>(before?.unit ?? 'nm');
  const torque = value === null ? null : { text: String(value), unit };
  const words = UNITS.find((one) => one.value === unit)?.words ?? unit;
  const said = torque === null ? 'without a torque' : `${torque.text} ${words}`;

  async function record(change: EntryOf<'wheels'>['change']) {
    const tight = change !== 'off' && torque !== null;
    await save({
      kind: 'wheels',
      ...begin(),
      change,
      which: [...CORNERS],
      ...(tight ? { torque } : {}),
    });
    if (tight) rememberTorque(carId, torque);
  }

  const press = (change: EntryOf<'wheels'>['change'], title: string, hint: string) => (
    <Button className={styles.target} busy={busy} onClick={() => record(change)}>
      <span>{title}</span>
      <span className={styles.hint}>{hint}</span>
    </Button>
  );

  return (
    <>
      <ShortCautions of={CARE} />
      <Stepper
        label="Torque"
        hint="Leave it empty if you did not read it."
        min={0}
        max={2000}
        step={unit === 'nm' ? 5 : 1}
        unit={words}
        value={value}
        onChange={setValue}
      />
      <Choice
        label="Unit of torque"
        hideLabel
        size="small"
        value={unit}
        onChange={setUnit}
        options={UNITS}
      />
      <div className={styles.single}>
        {press('off', 'Wheels taken off', 'All four')}
        {press('rechecked', 'Torque checked again', said)}
        {press('torqued', 'All four torqued', said)}
      </div>
    </>
  );
}

/** What the wheels were last tightened to, by the log. */
function onRecord({ last }: FastProps['car']): Torque | null {
  return last.wheels?.kind === 'wheels' ? (last.wheels.torque ?? null) : null;
}
