'use client';

import { KIND_WORDS } from '@quartermark/engine/display';
import { Button } from '../components/index.ts';
import { Stick } from '../garage/Stick.tsx';
import styles from './Pocket.module.css';
import { ScreenStays } from './ScreenStays.tsx';
import type { Chosen } from './sheet/chosen-car.ts';
import { FAST, type Fast, goTo } from './view-of-address.ts';

const WORDS: Readonly<Record<Fast, string>> = {
  oilCheck: KIND_WORDS.oilCheck,
  oilTopUp: KIND_WORDS.oilTopUp,
  session: 'Session done',
  wheels: KIND_WORDS.wheels,
  fuel: KIND_WORDS.fuel,
  finding: KIND_WORDS.finding,
  odometer: KIND_WORDS.odometer,
};

type HomeProps = { chosen: Chosen; today: string; several: boolean };

/** The car, what is known of its oil, and the targets, which end where the thumb is. */
export function Home({ chosen, today, several }: HomeProps) {
  const { view } = chosen.car;
  const garage = { ...chosen.garage.garage, today };
  const level = view.analysis?.lastLevel ?? null;
  return (
    <>
      <div className={styles.top}>
        <h1 className={styles.carName}>
          {several ? (
            <button type="button" className={styles.chooser} onClick={() => goTo('cars')}>
              {view.car.name}
              <span className={styles.chooserHint}>Another car</span>
            </button>
          ) : (
            view.car.name
          )}
        </h1>
        <p>
          Oil: {level === null ? 'no reading on record.' : <Stick level={level} garage={garage} />}
        </p>
      </div>
      <nav aria-label="What happened" className={styles.targets}>
        {FAST.map((fast) => (
          <Button key={fast} className={styles.target} onClick={() => goTo(fast)}>
            {WORDS[fast]}
          </Button>
        ))}
        <Button className={styles.target} onClick={() => goTo('more')}>
          More
        </Button>
      </nav>
      <ScreenStays />
    </>
  );
}
