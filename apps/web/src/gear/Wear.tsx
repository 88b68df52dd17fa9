import type { GarageView } from '@quartermark/api/client';
import { countedWords, wearSentences, worstOf } from '@quartermark/engine/display';
import type { ComponentWear } from '@quartermark/engine/gear';
import styles from './Wear.module.css';
import { WearChart } from './WearChart.tsx';
import { wearTable } from './wear-table.ts';

type WearProps = { wear: ComponentWear; garage: GarageView };

/** How a part wears: in words first, then drawn, then each place in a table. */
export function Wear({ wear, garage: { distanceUnit: unit } }: WearProps) {
  const counted = countedWords(wear, unit);
  return (
    <section aria-labelledby="wear" className={styles.wear}>
      <h2 id="wear">How it wears</h2>
      <p className={styles.answer}>{wearSentences(wear, unit).join(' ')}</p>
      <div className={styles.charts}>
        {worstOf(wear).map((position) => (
          <WearChart
            key={`${position.what} ${position.where}`}
            position={position}
            wear={wear}
            unit={unit}
          />
        ))}
      </div>
      <Places wear={wear} unit={unit} />
      <p className={styles.note}>
        {counted === null ? '' : `${counted} `}
        Eight times in ten the value lies between the two in brackets. A figure worked out here is
        no inspection: look at it before it is used hard; its maker’s minimum comes first.
      </p>
    </section>
  );
}

function Places({ wear, unit }: { wear: ComponentWear; unit: 'km' | 'mi' }) {
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          <th scope="col">Likely now</th>
          <th scope="col">Use left to</th>
        </tr>
      </thead>
      {wearTable(wear, unit).map(({ place, now, measured, rate, left }) => (
        <tbody key={place}>
          <tr>
            <th scope="rowgroup" colSpan={2} className={styles.place}>
              {place} <span className={styles.soft}>measured {measured}</span>
            </th>
          </tr>
          <tr>
            <td>
              {now}
              <span className={styles.beneath}>{rate}</span>
            </td>
            <td>{left.length === 0 ? 'no minimum on record' : <Left left={left} />}</td>
          </tr>
        </tbody>
      ))}
    </table>
  );
}

function Left({ left }: { left: readonly string[] }) {
  return (
    <ul className={styles.left}>
      {left.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}
