import type { GarageView, OilComparedRow } from '@quartermark/api/client';
import {
  formatDay,
  LITRES_PER_1000_KM,
  type OilRate,
  type OilUnits,
  perWords,
  rateBand,
  rateFigure,
  US_QUARTS_PER_1000_MI,
} from '@quartermark/engine/display';
import type { Route } from 'next';
import Link from 'next/link';
import styles from './ComparedTable.module.css';

type ComparedTableProps = { rows: readonly OilComparedRow[]; garage: GarageView };

/** The comparison in figures, in litres and in quarts. */
export function ComparedTable({ rows, garage }: ComparedTableProps) {
  return (
    <details className={styles.fold} open>
      <summary>As a table</summary>
      <table className={styles.table}>
        <caption>
          Oil use, likely and in brackets eight times in ten: {perWords(LITRES_PER_1000_KM)}, then{' '}
          {perWords(US_QUARTS_PER_1000_MI)}
        </caption>
        <thead>
          <tr>
            <th scope="col">Car</th>
            <th scope="col">Now</th>
            <th scope="col">A year ago</th>
          </tr>
        </thead>
        {rows.map((row) => (
          <CarBody key={row.carId} row={row} garageId={garage.id} />
        ))}
      </table>
    </details>
  );
}

function CarBody({ row, garageId }: { row: OilComparedRow; garageId: string }) {
  const { line, limit } = row;
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" colSpan={3} className={styles.car}>
          <Link href={`/g/${garageId}/car/${row.carId}/oil` as Route} prefetch={false}>
            {row.name}
          </Link>
          {line?.ago ? (
            <span className={styles.soft}> compared with {formatDay(line.ago.on)}</span>
          ) : null}
        </th>
      </tr>
      <tr>
        <th scope="row">Road</th>
        <td>
          <Both rate={line?.road ?? null} />
        </td>
        <td>
          <Both rate={line?.ago?.road ?? null} />
        </td>
      </tr>
      {line?.hard || line?.ago?.hard ? (
        <tr>
          <th scope="row">Hard use</th>
          <td>
            <Both rate={line.hard} />
          </td>
          <td>
            <Both rate={line.ago?.hard ?? null} />
          </td>
        </tr>
      ) : null}
      {limit === null ? null : (
        <tr>
          <th scope="row">Your limit</th>
          <td colSpan={2}>
            {rateFigure(limit, LITRES_PER_1000_KM)}
            <span className={styles.beneath}>{rateFigure(limit, US_QUARTS_PER_1000_MI)}</span>
          </td>
        </tr>
      )}
    </tbody>
  );
}

function Both({ rate }: { rate: OilRate | null }) {
  if (rate === null) return 'not known';
  const words = (units: OilUnits) => `${rateFigure(rate.likely, units)} (${rateBand(rate, units)})`;
  return (
    <>
      {words(LITRES_PER_1000_KM)}
      <span className={styles.beneath}>{words(US_QUARTS_PER_1000_MI)}</span>
    </>
  );
}
