'use client';

import { readNumber, type Volume } from '@quartermark/engine/log';
import { useState } from 'react';
import { Button, Choice, Stepper, Tick } from '../../components/index.ts';
import type { FastProps } from './begin.ts';
import styles from './Fast.module.css';

const BY_GARAGE = { l: 'l', usQt: 'usGal', impQt: 'impGal' } as const;
const WORDS = { l: 'L', usGal: 'US gal', impGal: 'imp gal' } as const;
type FuelUnit = keyof typeof WORDS;

/** Starts from what went in last time. */
export function FastFuel({ garage, car, begin, save, busy }: FastProps) {
  const last = car.last.fuel?.kind === 'fuel' ? car.last.fuel : null;
  const [before] = useState(() => (last && last.volume.unit in WORDS ? last.volume : null));
  const [value, setValue] = useState(() => numberOf(before));
  const [unit, setUnit] = useState<FuelUnit>(
    (before?.unit as FuelUnit | undefined) ?? BY_GARAGE[garage.garage.volumeUnit],
  );
  const [full, setFull] = useState(last?.full ?? false);

  function record() {
    if (value === null) return;
    // untouched, it is what was typed then, letter for letter
    const same = before !== null && numberOf(before) === value;
    const volume: Volume = { text: same ? before.text : String(value), unit };
    return save({ kind: 'fuel', ...begin(), volume, ...(full ? { full } : {}) });
  }

  return (
    <>
      <Stepper
        label="Fuel"
        hint={before === null ? undefined : 'Starts from the last amount.'}
        min={0}
        max={2000}
        step={unit === 'l' ? 1 : 0.5}
        unit={WORDS[unit]}
        value={value}
        onChange={setValue}
      />
      <Choice
        label="Unit of fuel"
        hideLabel
        size="small"
        value={unit}
        onChange={setUnit}
        options={(Object.keys(WORDS) as FuelUnit[]).map((one) => ({
          value: one,
          words: WORDS[one],
        }))}
      />
      <Tick label="Filled up" checked={full} onChange={setFull} />
      <p className={styles.save}>
        <Button
          look="main"
          busy={busy}
          busyWords="Saving …"
          reason={value === null ? 'Say how much went in.' : null}
          onClick={record}
        >
          Save
        </Button>
      </p>
    </>
  );
}

function numberOf(volume: Volume | null): number | null {
  if (volume === null) return null;
  const read = readNumber(volume.text, false);
  return 'value' in read ? read.value : null;
}
