'use client';

import type { EventPage, TickView } from '@quartermark/api/client';
import { capital, workDays, workParts } from '@quartermark/engine/display';
import type { WorkLine } from '@quartermark/engine/readiness';
import { Tick } from '../components/index.ts';
import { momentWords } from '../garage/moment-words.ts';
import { DoorLink } from './DoorLink.tsx';
import styles from './EventWork.module.css';
import { useTick } from './use-tick.ts';

type WorkLineRowProps = {
  line: WorkLine;
  carName: string;
  /** the last one; null: nobody has ticked it */
  tick: TickView | null;
  page: EventPage;
};

/** One piece of work: its tick, its days and parts, and the door to where it is recorded. */
export function WorkLineRow({ line, carName, tick, page }: WorkLineRowProps) {
  const { garage, event } = page;
  const { isDone, press } = useTick({
    garageId: garage.id,
    eventId: event.eventId,
    carId: line.car,
    line: line.id,
    done: tick?.done ?? false,
  });
  const spoken = { asOf: garage.today };
  const parts = workParts(line, spoken);
  return (
    <li className={styles.line}>
      <div>
        <Tick
          label={line.what}
          hint={[
            `${capital(workDays(line, spoken))}.`,
            parts ? `${capital(parts)}.` : '',
            line.blocking ? '' : 'Advice.',
          ]
            .filter((part) => part !== '')
            .join(' ')}
          checked={isDone}
          onChange={press}
        />
        {tick ? (
          <p className={styles.soft}>
            {tick.done ? 'Ticked by' : 'Taken back by'} {tick.by},{' '}
            {momentWords(tick.at, garage.zone)}.{tick.done ? ' Not recorded yet.' : ''}
          </p>
        ) : null}
      </div>
      {line.record ? (
        <p>
          <DoorLink
            record={line.record}
            needs={line.needs}
            of={`${line.what}, ${carName}`}
            carId={line.car}
            page={page}
          />
        </p>
      ) : null}
    </li>
  );
}
