'use client';

import { KIND_WORDS } from '@quartermark/engine/display';
import type { EntryInput, EntryKind } from '@quartermark/engine/log';
import { useState } from 'react';
import { newId } from '../client/make-id.ts';
import { Button } from '../components/index.ts';
import { aboutCar } from '../record/about.ts';
import { EntryForm } from '../record/EntryForm.tsx';
import { emptyFields } from '../record/record-fields.ts';
import { KIND_GROUPS, KIND_QUESTION } from '../record/record-kinds.ts';
import type { Start } from '../record/start.ts';
import styles from './Pocket.module.css';
import { PocketEntryDoor } from './PocketEntryDoor.tsx';
import type { Chosen } from './sheet/chosen-car.ts';
import { goTo } from './view-of-address.ts';

type MoreProps = {
  chosen: Chosen;
  /** in the garage, by its own clock */
  today: string;
  onSaved: (entry: EntryInput, order: number | null) => void;
};

/** Every kind of entry, in its whole form, from what this phone keeps. */
export function More({ chosen, today, onSaved }: MoreProps) {
  const [kind, setKind] = useState<EntryKind | null>(null);
  if (kind !== null)
    return (
      <PocketEntryDoor garageId={chosen.garage.garage.id} onSaved={onSaved}>
        <WholeForm chosen={chosen} today={today} kind={kind} onLeave={() => setKind(null)} />
      </PocketEntryDoor>
    );
  return (
    <>
      <div className={styles.top}>
        <p className={styles.event}>{chosen.car.view.car.name}</p>
        <h1>What happened?</h1>
      </div>
      <nav aria-label="Every kind" className={styles.targets}>
        {KIND_GROUPS.flatMap(({ kinds }) => kinds).map((one) => (
          <Button key={one} className={styles.target} onClick={() => setKind(one)}>
            {KIND_WORDS[one]}
          </Button>
        ))}
      </nav>
      <p className={styles.back}>
        <Button onClick={() => goTo('home')}>Back</Button>
      </p>
    </>
  );
}

type WholeFormProps = Pick<MoreProps, 'chosen' | 'today'> & {
  kind: EntryKind;
  onLeave: () => void;
};

function WholeForm({ chosen, today, kind, onLeave }: WholeFormProps) {
  const { view, last } = chosen.car;
  const [start] = useState<Start>(() => ({
    entryId: newId(),
    today,
    unit: view.car.unit,
    volumeUnit: view.garage.volumeUnit,
    last,
  }));
  return (
    <>
      <div className={styles.top}>
        <p className={styles.event}>{view.car.name}</p>
        <h1>{KIND_QUESTION[kind]}</h1>
      </div>
      <EntryForm
        about={aboutCar(view, { gear: chosen.garage.gear })}
        kind={kind}
        base={null}
        start={start}
        initial={emptyFields(start)}
        draft={`pocket:${view.carId}:${kind}`}
        last={last}
        onDone={() => goTo('home')}
        onLeave={onLeave}
      />
    </>
  );
}
