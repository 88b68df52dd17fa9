'use client';

import type { OverviewRow } from '@quartermark/api/client';
import { formatDay, type Lane, type LaneItem, laneItemWords } from '@quartermark/engine/display';
import type { Route } from 'next';
import Link from 'next/link';
import { useState } from 'react';
import { planWords } from '../lay-up/plan-words.ts';
import styles from './BoardTable.module.css';
import { laneState } from './lane-state.ts';
import { dueBefore, placeItem } from './place.ts';
import { plansOf, type Season } from './season.ts';

type BoardTableProps = { rows: readonly OverviewRow[]; season: Season; garageId: string };

/** The facts of the board as a table; made only where somebody opens it. */
export function BoardTable({ rows, season, garageId }: BoardTableProps) {
  const [open, setOpen] = useState(false);
  return (
    <details className={styles.fold} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>As a table</summary>
      {open ? (
        <table className={styles.table}>
          <caption>What runs out first, from today on</caption>
          <thead>
            <tr>
              <th scope="col">Car</th>
              <th scope="col">Item</th>
              <th scope="col">How it stands</th>
              <th scope="col">Likely by</th>
              <th scope="col">As early as</th>
              <th scope="col">Falls before</th>
            </tr>
          </thead>
          {rows.map((row) => (
            <CarBody key={row.carId} row={row} season={season} garageId={garageId} />
          ))}
        </table>
      ) : null}
    </details>
  );
}

type CarBodyProps = { row: OverviewRow; season: Season; garageId: string };

function CarBody({ row, season, garageId }: CarBodyProps) {
  const { lane } = row;
  const { words, why } = laneState(row);
  const lines = lane ? tableLines(row, lane, season) : [];
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" rowSpan={Math.max(1, lines.length)}>
          <Link href={`/g/${garageId}/car/${row.carId}` as Route} prefetch={false}>
            {row.name}
          </Link>
          <span className={styles.state}>{why === undefined ? words : `${words}: ${why}`}</span>
          {plansOf(season, row.carId).map(({ layUpId, layUp }) => (
            <span key={layUpId} className={styles.state}>
              Lay-up planned {planWords(layUp)}
            </span>
          ))}
        </th>
        {lines[0] ? <Cells {...lines[0]} /> : <td colSpan={5}>Nothing to show.</td>}
      </tr>
      {lines.slice(1).map((line) => (
        <tr key={line.id}>
          <Cells {...line} />
        </tr>
      ))}
    </tbody>
  );
}

type TableLine = Record<'id' | 'name' | 'stands' | 'likely' | 'early' | 'before', string>;

function Cells({ name, stands, likely, early, before }: TableLine) {
  return (
    <>
      <td>{name}</td>
      <td>{stands}</td>
      <td>{likely}</td>
      <td>{early}</td>
      <td>{before}</td>
    </>
  );
}

function likelyDay({ likely, early, day, state }: LaneItem): string {
  const on = likely ?? (state === 'unknown' ? null : day);
  if (on !== null) return state === 'overdue' ? `since ${formatDay(on)}` : formatDay(on);
  return early === undefined ? 'no date' : 'not within three years';
}

function tableLines(row: OverviewRow, lane: Lane, { axis, events }: Season): TableLine[] {
  return lane.next.map((item) => {
    const { word, detail } = laneItemWords(item, row);
    const before = dueBefore(row.carId, placeItem(item, lane.laidUp, axis), events);
    return {
      id: item.id,
      name: item.name,
      stands: detail === '' ? word : `${word}, ${detail}`,
      likely: likelyDay(item),
      early: item.early ? formatDay(item.early) : '–',
      before: before ? `${before.event.name}, ${formatDay(before.event.start)}` : 'no event',
    };
  });
}
