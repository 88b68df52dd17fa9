'use client';

import { useState } from 'react';
import { Button, Choice, Stepper, Tick } from '../../components/index.ts';
import type { FastProps } from './begin.ts';
import styles from './Fast.module.css';

const USES = [
  { value: 'circuit' as const, words: 'Circuit' },
  { value: 'autocross' as const, words: 'Autocross' },
];

/** A session that has just ended, like the one before; the steppers say what was different. */
export function FastSession({ car, begin, save, busy }: FastProps) {
  const last = car.last.session?.kind === 'session' ? car.last.session : null;
  const [use, setUse] = useState(last?.use ?? 'circuit');
  const [sessions, setSessions] = useState<number | null>(1);
  const [laps, setLaps] = useState<number | null>(last?.laps ?? null);
  const [same, setSame] = useState(true);
  const shared = [last?.venue && `at ${last.venue}`, last?.driver && `driven by ${last.driver}`]
    .filter(Boolean)
    .join(', ');

  const record = () =>
    save({
      kind: 'session',
      ...begin(),
      use,
      sessions: sessions ?? 1,
      ...(laps === null ? {} : { laps }),
      ...(same && last?.venue ? { venue: last.venue } : {}),
      ...(same && last?.driver ? { driver: last.driver } : {}),
    });

  return (
    <>
      <Choice label="Driven on" size="small" value={use} onChange={setUse} options={USES} />
      {shared === '' ? null : (
        <Tick label={`Same as the last one: ${shared}`} checked={same} onChange={setSame} />
      )}
      <Stepper label="Sessions" min={1} max={100} value={sessions} onChange={setSessions} />
      <Stepper label="Laps" optional min={0} max={2000} value={laps} onChange={setLaps} />
      <p className={styles.save}>
        <Button look="main" busy={busy} busyWords="Saving …" onClick={record}>
          Save
        </Button>
      </p>
    </>
  );
}
