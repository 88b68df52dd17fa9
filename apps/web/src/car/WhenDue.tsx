import type { ItemResult } from '@quartermark/engine';
import { bandDays, forecastSentence } from '@quartermark/engine/display';
import type { Owned } from '../items/owned.ts';
import type { WatchedItem } from './ItemList.tsx';
import styles from './WhenDue.module.css';

type WhenDueProps = { row: WatchedItem; result: ItemResult; owned: Owned };

/** Why it is expected to fall due when it is, and the days of that; nothing where nothing is forecast. */
export function WhenDue({ row: { item }, result, owned }: WhenDueProps) {
  const { unit, analysis, openLayUp } = owned;
  if (!analysis) return null;
  const { asOf } = analysis;
  const sentence = forecastSentence(result, { item, unit, asOf, openLayUp });
  if (sentence === null || result.dueDate === undefined) return null;
  const days = bandDays(result.dueDate, { asOf });
  return (
    <>
      <p>{sentence}</p>
      {days.length > 0 ? (
        <dl className={styles.days}>
          {days.map(({ words, day }) => (
            <div key={words}>
              <dt>{words}</dt>
              <dd>{day}</dd>
            </div>
          ))}
        </dl>
      ) : null}
    </>
  );
}
