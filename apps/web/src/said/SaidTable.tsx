import { HORIZON_WORDS } from '@quartermark/engine/display';
import { HORIZONS, type SaidTally } from '@quartermark/engine/said';
import styles from './SaidTable.module.css';

/** The share by how far ahead it was said: an item counts once in each line, between two services. */
export function SaidTable({ horizons }: Pick<SaidTally, 'horizons'>) {
  return (
    <table className={styles.table}>
      <caption>By how far ahead it was said; an item counts once in each line</caption>
      <thead>
        <tr>
          <th scope="col">Said</th>
          <th scope="col">With an outcome</th>
          <th scope="col">Inside</th>
        </tr>
      </thead>
      <tbody>
        {HORIZONS.map((horizon) => (
          <tr key={horizon}>
            <th scope="row">{HORIZON_WORDS[horizon]}</th>
            <td>{horizons[horizon].verdicts}</td>
            <td>{horizons[horizon].verdicts === 0 ? 'none yet' : horizons[horizon].inside}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
