'use client';

import { formatNumber } from '@quartermark/engine/display';
import { type FormEvent, useState } from 'react';
import { Button, TextField } from '../../components/index.ts';
import type { FastProps } from './begin.ts';
import styles from './Fast.module.css';
import { lastDigits, readingFrom, wholeOf } from './last-digits.ts';

/** The last three digits are enough; the rest follows from the reading before. */
export function FastOdometer({ car, begin, save, busy }: FastProps) {
  const before = car.last.odometer;
  const last = before === null ? null : wholeOf(before.text);
  const unit = before?.unit ?? car.view.car.unit;
  const [typed, setTyped] = useState('');
  const reading = readingFrom(typed, last);

  function record(event: FormEvent) {
    event.preventDefault();
    if (reading !== null && !busy)
      void save({ kind: 'odometer', ...begin(), odometer: { text: String(reading), unit } });
  }

  return (
    <form onSubmit={record} className={styles.form}>
      <TextField
        label={last === null ? 'Odometer' : 'Last three digits'}
        hint={
          last === null
            ? 'The whole reading, because none is on record.'
            : `It stood at ${before?.text} ${unit}, ending ${lastDigits(last)}. More than three digits are the whole reading.`
        }
        error={typed !== '' && reading === null ? 'Only digits, at most seven.' : null}
        suffix={unit}
        figures
        // the one thing this screen is for
        autoFocus
        inputMode="numeric"
        autoComplete="off"
        maxLength={7}
        value={typed}
        onChange={(event) => setTyped(event.currentTarget.value)}
      />
      <p aria-live="polite" className={styles.meaning}>
        {reading === null ? ' ' : meaning(reading, last, unit)}
      </p>
      <p className={styles.save}>
        <Button
          type="submit"
          look="main"
          busy={busy}
          busyWords="Saving …"
          reason={reading === null ? 'Type what the odometer ends with.' : null}
        >
          Save
        </Button>
      </p>
    </form>
  );
}

function meaning(reading: number, last: number | null, unit: string): string {
  const whole = `Odometer ${formatNumber(reading, 0)} ${unit}`;
  if (last === null) return `${whole}.`;
  if (reading < last) return `${whole}: lower than the last one.`;
  return `${whole}: ${formatNumber(reading - last, 0)} ${unit} on.`;
}
