'use client';

import type { GarageView, OverviewRow } from '@quartermark/api/client';
import { formatDay, laneItemWords } from '@quartermark/engine/display';
import type { Route } from 'next';
import Link from 'next/link';
import { StateMark, StateWord } from '../components/index.ts';
import styles from './CarRow.module.css';
import { NotUpdated } from './NotUpdated.tsx';
import { Readings } from './Readings.tsx';

type CarRowProps = { row: OverviewRow; garage: GarageView };

/** One car of the list: what runs out first, the next two, and what was last read. */
export function CarRow({ row, garage }: CarRowProps) {
  const { lane } = row;
  return (
    <li className={styles.row}>
      <div className={styles.name}>
        <h2>
          <Link
            href={`/g/${garage.id}/car/${row.carId}` as Route}
            // a list of hundreds would have the server render hundreds of pages nobody asked for
            prefetch={false}
            className={styles.link}
          >
            {row.name}
          </Link>
        </h2>
        {lane?.laidUp ? <StateWord kind="laidUp" words={laidUpWords(lane.laidUp)} /> : null}
        <Progress row={row} />
      </div>
      <Items row={row} />
      {lane ? <Readings lane={lane} unit={row.unit} garage={garage} /> : null}
      {row.failure ? <NotUpdated failure={row.failure} carId={row.carId} garage={garage} /> : null}
    </li>
  );
}

function laidUpWords({ since, until }: { since: string; until: string | null }): string {
  const end = until === null ? '' : ` until ${formatDay(until)}`;
  return `Laid up since ${formatDay(since)}${end}`;
}

/** Held open even while empty, so that its coming and going moves nothing. */
function Progress({ row }: { row: OverviewRow }) {
  const behind = row.version < row.wantedVersion && !row.failure;
  return (
    <span className={styles.progress} aria-live="polite">
      {behind && row.lane ? 'being recomputed …' : ''}
    </span>
  );
}

function Items({ row }: { row: OverviewRow }) {
  const { lane } = row;
  if (!lane) return <p className={styles.none}>{row.failure ? '' : 'Being recomputed …'}</p>;
  if (lane.next.length === 0) return <p className={styles.none}>Nothing is watched yet.</p>;
  return (
    <ol className={styles.items}>
      {lane.next.map((item) => {
        const { mark, word, detail } = laneItemWords(item, row.unit, row.laidUp);
        return (
          <li key={item.id} className={styles.item}>
            <StateMark kind={mark} />
            <span>
              {item.name}: <strong>{word}</strong>
              {detail ? <span className={styles.detail}>, {detail}</span> : null}
            </span>
          </li>
        );
      })}
    </ol>
  );
}
