'use client';

import type { Route } from 'next';
import Link from 'next/link';
import { Button, Choice } from '../components/index.ts';
import { CarLines } from './CarLines.tsx';
import { type CarDebriefProps, errorsAt } from './car-debrief-props.ts';
import styles from './Debrief.module.css';
import { partWords, recordedWords } from './debrief-words.ts';
import { PartFoot } from './PartFoot.tsx';
import { partKey } from './part-key.ts';

const WENT_OPTIONS = [
  { value: 'yes', words: 'It went' },
  { value: 'no', words: 'It did not go' },
] as const;

/** One car of a debrief: what is on record, whether it went, and what else is to be written down. */
export function CarDebrief(props: CarDebriefProps) {
  const { car, fields, saved, open, onOpen, onChange } = props;
  const { carId, name } = car;
  const known = car.recorded.length > 0;
  return (
    <section className={styles.car} aria-label={name}>
      <h2>{name}</h2>
      <OnRecord {...props} />
      {known && fields.went !== 'yes' ? (
        <div>
          <Button
            onClick={() => {
              onChange({ went: 'yes' });
              onOpen();
            }}
          >
            Add to it
          </Button>
        </div>
      ) : null}
      {props.stayed ? <p>It was said that it did not go.</p> : null}
      {known || saved[partKey.stayed(carId)] ? null : (
        <Choice
          label={`Did ${name} go?`}
          hideLabel
          size="small"
          options={WENT_OPTIONS}
          value={fields.went === '' ? null : fields.went}
          onChange={(went) => {
            onChange({ went });
            if (went === 'yes') onOpen();
          }}
          error={errorsAt(props, partKey.car(carId))['entry.use']}
        />
      )}
      {fields.went === 'no' ? <Stayed {...props} /> : null}
      {fields.went === 'yes' && open ? <CarLines {...props} /> : null}
      {fields.went === 'yes' && !open ? <Folded {...props} /> : null}
    </section>
  );
}

/** What is on record already, and what this form saved besides. */
function OnRecord({ page, car, read, saved }: CarDebriefProps) {
  const entryHref = (id: string) => `/g/${page.garage.id}/entry/${id}` as Route;
  const listed = new Set(car.recorded.map(({ entry }) => entry.id));
  const more = read.parts.filter(({ key, entry }) => saved[key] && !listed.has(entry.id));
  if (listed.size + more.length === 0) return null;
  const days = new Set(car.recorded.map(({ entry }) => entry.on)).size;
  const lines = [
    ...car.recorded.map((view) => ({
      id: view.entry.id,
      words: recordedWords(view, days),
      waits: false,
    })),
    ...more.map(({ key, entry }) => ({
      id: entry.id,
      words: partWords(entry),
      waits: saved[key]?.at === 'device',
    })),
  ];
  return (
    <ul className={styles.lines}>
      {lines.map(({ id, words, waits }) => (
        <li key={id}>
          {waits ? 'Waits on this phone' : 'On record'}: {words}.{' '}
          {waits ? null : (
            <Link href={entryHref(id)} prefetch={false}>
              Open<span className={styles.unseen}>: {words}</span>
            </Link>
          )}
        </li>
      ))}
    </ul>
  );
}

function Stayed(props: CarDebriefProps) {
  return <PartFoot {...props} partKey={partKey.stayed(props.car.carId)} />;
}

/** A car whose lines are filled in while another one is open. */
function Folded({ read, saved, onOpen }: CarDebriefProps) {
  const waiting = read.parts.filter(({ key }) => saved[key] === undefined);
  const wrong = Object.keys(read.problems).length > 0;
  const words = waiting.map(({ entry }) => partWords(entry)).join('; ');
  return (
    <p>
      {words === '' ? null : <>To be saved: {words}. </>}
      {wrong ? 'Something in it needs a change. ' : null}
      <Button look="quiet" onClick={onOpen}>
        Open its lines
      </Button>
    </p>
  );
}
