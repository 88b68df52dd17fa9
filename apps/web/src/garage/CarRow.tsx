'use client';

import type { GarageView, OverviewRow } from '@quartermark/api/client';
import type { Route } from 'next';
import Link from 'next/link';
import { LaneItems } from '../board/LaneItems.tsx';
import { LaneLines } from '../board/LaneLines.tsx';
import { laneState } from '../board/lane-state.ts';
import { plansOf, type Season } from '../board/season.ts';
import { joinClasses, StateWord } from '../components/index.ts';
import { planWords } from '../lay-up/plan-words.ts';
import styles from './CarRow.module.css';
import { NotUpdated } from './NotUpdated.tsx';
import { Readings } from './Readings.tsx';

type CarRowProps = { row: OverviewRow; garage: GarageView; season: Season };

/** One car: how it stands, what was last read, and its lane with what runs out first. */
export function CarRow({ row, garage, season }: CarRowProps) {
  const { lane } = row;
  const { mark, words, summed, why } = laneState(row);
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
        <span className={joinClasses(styles.state, summed && styles.summed)}>
          <StateWord kind={mark} words={words} />
        </span>
        {why === undefined ? null : <span className={styles.why}>{why}</span>}
        {plansOf(season, row.carId).map(({ layUpId, layUp }) => (
          <span key={layUpId} className={styles.plan}>
            Lay-up planned {planWords(layUp)}
          </span>
        ))}
        <Progress row={row} />
      </div>
      <div className={styles.lane}>
        <LaneLines season={season} carId={row.carId} laidUp={lane?.laidUp ?? null} />
        <Items row={row} season={season} />
      </div>
      {lane ? (
        <div className={styles.readings}>
          <Readings lane={lane} unit={row.unit} garage={garage} />
        </div>
      ) : null}
      {row.failure ? <NotUpdated failure={row.failure} carId={row.carId} garage={garage} /> : null}
    </li>
  );
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

function Items({ row, season }: { row: OverviewRow; season: Season }) {
  const { lane } = row;
  if (!lane) return <p className={styles.none}>{row.failure ? '' : 'Being recomputed …'}</p>;
  return <LaneItems row={row} lane={lane} season={season} />;
}
