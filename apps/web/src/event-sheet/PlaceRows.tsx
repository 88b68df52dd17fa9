import type { PlaceFact } from '@quartermark/engine/readiness';
import styles from './EventSheet.module.css';
import { placeTable } from './place-table.ts';

/** The last measurement of each place, corner by corner. */
export function PlaceRows({ title, places }: { title: string; places: readonly PlaceFact[] }) {
  const { on, columns, corners } = placeTable(places);
  return (
    <section>
      <h3>{on === null ? title : `${title} on ${on}`}</h3>
      {columns.length === 0 ? (
        <p className={styles.open}>Not on record</p>
      ) : (
        <table className={styles.places}>
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
          <tbody>
            {corners.map(({ corner, cells }) => (
              <tr key={corner}>
                <th scope="row">{corner}</th>
                {cells.map((cell, at) => (
                  <td key={columns[at]}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
