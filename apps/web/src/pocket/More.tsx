'use client';

import { KIND_WORDS } from '@quartermark/engine/display';
import type { Route } from 'next';
import { Button, ButtonLink } from '../components/index.ts';
import { RECORD_KINDS } from '../record/record-kinds.ts';
import styles from './Pocket.module.css';
import type { Chosen } from './sheet/chosen-car.ts';
import { goTo } from './view-of-address.ts';

type MoreProps = { chosen: Chosen; today: string };

/** Every other kind of entry, in its whole form. */
export function More({ chosen }: MoreProps) {
  const { carId } = chosen.car.view;
  const at = `/g/${chosen.garage.garage.id}/record/${carId}`;
  return (
    <>
      <h1>What happened?</h1>
      <nav aria-label="Every kind" className={styles.targets}>
        {RECORD_KINDS.map((kind) => (
          <ButtonLink key={kind} href={`${at}/${kind}` as Route} className={styles.target}>
            {KIND_WORDS[kind]}
          </ButtonLink>
        ))}
      </nav>
      <p className={styles.back}>
        <Button onClick={() => goTo('home')}>Back</Button>
      </p>
    </>
  );
}
