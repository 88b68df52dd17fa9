import type { ComponentLife } from '@quartermark/engine/gear';
import type { Route } from 'next';
import Link from 'next/link';
import styles from './Measured.module.css';
import { measuredTable } from './measured-table.ts';

type MeasuredProps = { life: ComponentLife; unit: 'km' | 'mi'; garageId: string };

/** Its measurements, the newest first, each with the use it had behind it then. */
export function Measured({ life, unit, garageId }: MeasuredProps) {
  const { columns, measurements } = measuredTable(life.measured, unit);
  return (
    <section aria-labelledby="measured">
      <h2 id="measured">Measured</h2>
      {measurements.length === 0 ? (
        <p className={styles.none}>Not measured yet.</p>
      ) : (
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Where</th>
              {columns.map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          {measurements.map(({ entry, title, corners }) => (
            <tbody key={entry}>
              <tr>
                <th scope="rowgroup" colSpan={columns.length + 1} className={styles.title}>
                  <Link href={`/g/${garageId}/entry/${entry}` as Route} prefetch={false}>
                    {title}
                  </Link>
                </th>
              </tr>
              {corners.map(({ corner, cells }) => (
                <tr key={corner}>
                  <th scope="row">{corner}</th>
                  {cells.map((cell, at) => (
                    <td key={columns[at]}>{cell}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          ))}
        </table>
      )}
    </section>
  );
}
