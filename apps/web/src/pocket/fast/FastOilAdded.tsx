'use client';

import { typedWords } from '@quartermark/engine/display';
import { Button } from '../../components/index.ts';
import { cautionsFor } from '../../record/cautions.ts';
import type { FastProps } from './begin.ts';
import { bottles } from './bottles.ts';
import styles from './Fast.module.css';
import { ShortCautions } from './ShortCautions.tsx';

/** Bottle sizes; one press saves. */
export function FastOilAdded({ garage, car, begin, save, busy }: FastProps) {
  const last = car.last.oilTopUp?.kind === 'oilTopUp' ? (car.last.oilTopUp.volume ?? null) : null;
  return (
    <>
      <ShortCautions of={cautionsFor('oilTopUp', car.view.car.profile)} />
      <ul className={styles.pair} aria-label="How much went in">
        {bottles(garage.garage.volumeUnit, last).map((volume) => (
          <li key={`${volume.text} ${volume.unit}`}>
            <Button
              className={styles.target}
              busy={busy}
              onClick={() => save({ kind: 'oilTopUp', ...begin(), volume })}
            >
              <span>{typedWords(volume)}</span>
              {volume === last ? <span className={styles.hint}>As last time</span> : null}
            </Button>
          </li>
        ))}
      </ul>
    </>
  );
}
