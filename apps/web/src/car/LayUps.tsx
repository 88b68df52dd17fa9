import type { CarView } from '@quartermark/api/client';
import { formatDay } from '@quartermark/engine/display';
import type { LayUpWindow } from '@quartermark/engine/log';
import type { Route } from 'next';
import Link from 'next/link';
import { ButtonLink, StateWord } from '../components/index.ts';
import { planWords } from '../lay-up/plan-words.ts';

/** When the car is planned to be, is and was laid up: what comes first, then the newest. */
export function LayUps({ view }: { view: CarView }) {
  const { garage, carId, layUps, plannedLayUps } = view;
  const newestFirst = [...layUps].sort((a, b) => (a.start < b.start ? 1 : -1));
  return (
    <>
      {plannedLayUps.length + layUps.length === 0 ? <p>None on record, none planned.</p> : null}
      <ul>
        {plannedLayUps.map(({ layUpId, layUp }) => (
          <li key={layUpId}>
            Planned: {planWords(layUp)}.{' '}
            <Link href={`/g/${garage.id}/lay-up/${layUpId}` as Route} prefetch={false}>
              Change the plan
            </Link>
          </li>
        ))}
        {newestFirst.map((window) => (
          <li key={window.id}>
            {covers(window, garage.today) ? (
              <StateWord kind="laidUp" words="Laid up" detail={spanWords(window)} />
            ) : (
              spanWords(window)
            )}
          </li>
        ))}
      </ul>
      <ButtonLink href={`/g/${garage.id}/lay-up/add?car=${carId}` as Route} look="quiet">
        Plan a lay-up
      </ButtonLink>
    </>
  );
}

function covers({ start, end }: LayUpWindow, day: string): boolean {
  return start <= day && (end === undefined || day <= end);
}

function spanWords({ start, end }: LayUpWindow): string {
  const from = formatDay(start);
  return end === undefined ? `since ${from}, no end said` : `${from} to ${formatDay(end)}`;
}
