import type { EventPage } from '@quartermark/api/client';
import { capital, workDays, workParts } from '@quartermark/engine/display';
import type { Need } from '@quartermark/engine/readiness';
import { Evidence } from '../car/Evidence.tsx';
import { Why } from '../components/index.ts';
import { AcceptNeed } from './AcceptNeed.tsx';
import { DoorLink } from './DoorLink.tsx';
import styles from './NeedDetail.module.css';
import type { ReadCar } from './of-page.ts';

type NeedDetailProps = { need: Need; car: ReadCar; page: EventPage };

/** Why a need stands as it does, what it rests on, what to do about it, and who may take it upon himself. */
export function NeedDetail({ need, car, page }: NeedDetailProps) {
  const { title, reason, evidence } = need;
  return (
    <div className={styles.detail}>
      {reason === '' ? null : <p>{reason}</p>}
      <ToDo need={need} car={car} page={page} />
      {evidence.length > 0 ? (
        <Why of={title} words={entriesWords(evidence.length)}>
          <Evidence
            ids={evidence}
            view={{ garage: page.garage, items: car.items, analysis: null }}
          />
        </Why>
      ) : null}
      <AcceptNeed need={need} car={car} page={page} />
    </div>
  );
}

function ToDo({ need: { id, remedy, status, title }, car, page }: NeedDetailProps) {
  if (remedy === null || status === 'met') return null;
  const spoken = { asOf: page.garage.today };
  const parts = workParts(remedy, spoken);
  return (
    <>
      <p>
        To do: {remedy.what}, {workDays(remedy, spoken)}.{parts ? ` ${capital(parts)}.` : ''}
      </p>
      {remedy.record ? (
        <p>
          <DoorLink
            record={remedy.record}
            needs={[id]}
            of={`${title}, ${car.name}`}
            carId={car.carId}
            page={page}
          />
        </p>
      ) : null}
    </>
  );
}

function entriesWords(count: number): string {
  return count === 1 ? 'The entry it rests on' : `The ${count} entries it rests on`;
}
