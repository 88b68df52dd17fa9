import type { EventPage } from '@quartermark/api/client';
import { marginWords, needStatusWords, readyWords, workDays } from '@quartermark/engine/display';
import type { Need } from '@quartermark/engine/readiness';
import type { Route } from 'next';
import Link from 'next/link';
import { StateWord, Why } from '../components/index.ts';
import { byWork } from './by-work.ts';
import styles from './CarNeeds.module.css';
import { NeedDetail } from './NeedDetail.tsx';
import { type ReadCar, saidIn } from './of-page.ts';
import { TakenOn } from './TakenOn.tsx';

type CarNeedsProps = { car: ReadCar; page: EventPage };

/** One car: the verdict, then what it lacks in the order in which one works, what is fine folded. */
export function CarNeeds({ car, page }: CarNeedsProps) {
  const { garage } = page;
  const { mark, word } = readyWords(car.readiness.verdict, { asOf: garage.today });
  const open = byWork(car.readiness.needs);
  const fine = car.readiness.needs.filter(({ status }) => status === 'met');
  return (
    <>
      <h3 className={styles.name}>
        <Link href={`/g/${garage.id}/car/${car.carId}` as Route} prefetch={false}>
          {car.name}
        </Link>
      </h3>
      <p className={styles.verdict}>
        <StateWord kind={mark} words={word} />
      </p>
      <TakenOn readiness={car.readiness} today={garage.today} />
      {open.length > 0 ? <NeedList needs={open} car={car} page={page} label="Not met" /> : null}
      {fine.length > 0 ? (
        <details className={styles.fold}>
          <summary>
            {fine.length === 1 ? '1 thing is fine' : `${fine.length} things are fine`}
          </summary>
          <NeedList needs={fine} car={car} page={page} label="Fine" />
        </details>
      ) : null}
    </>
  );
}

type NeedListProps = CarNeedsProps & { needs: readonly Need[]; label: string };

function NeedList({ needs, label, ...of }: NeedListProps) {
  return (
    <ul className={styles.list} aria-label={`${of.car.name}: ${label}`}>
      {needs.map((need) => (
        <NeedLine key={need.id} need={need} {...of} />
      ))}
    </ul>
  );
}

function NeedLine({ need, car, page }: CarNeedsProps & { need: Need }) {
  const { title, status, margin, remedy, weight, accepted } = need;
  const { mark, word } = needStatusWords(status);
  const details = [
    margin ? marginWords(margin, saidIn(page, car)) : '',
    weight === 'advice' && status !== 'met' ? 'advice' : '',
    accepted ? `taken on by ${accepted.by}` : '',
  ].filter((part) => part !== '');
  return (
    <li className={styles.need}>
      <h4>{title}</h4>
      <p>
        <StateWord kind={mark} words={word} detail={details.join(', ')} />
      </p>
      {remedy && !accepted && status !== 'met' ? (
        <p className={styles.soft}>
          {remedy.what}, {workDays(remedy, { asOf: page.garage.today })}.
        </p>
      ) : null}
      <Why of={`${title}, ${car.name}`}>
        <NeedDetail need={need} car={car} page={page} />
      </Why>
    </li>
  );
}
