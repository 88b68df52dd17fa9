import type { AmountLimitResult } from '@quartermark/engine';
import { type ItemFacts, limitShare, type UsePart, useParts } from '@quartermark/engine/display';
import type { CSSProperties } from 'react';
import styles from './UseBar.module.css';

type UseBarProps = { limit: AmountLimitResult; item: ItemFacts; unit: 'km' | 'mi' };

/**
 * The use that counts towards a limit, by class: a thin bar as long as the limit, each class with a filling
 * of its own, and the figures in a table behind it. Nothing where nothing counts yet.
 */
export function UseBar({ limit, item, unit }: UseBarProps) {
  const parts = useParts(limit, { item, unit });
  if (parts.length === 0) return null;
  return (
    <div className={styles.use}>
      <div className={styles.bar} aria-hidden="true">
        {parts.map((part) => (
          <span
            key={part.where}
            className={styles.part}
            data-use={fillingOf(part)}
            style={{ '--share': part.share } as CSSProperties}
          />
        ))}
        <span className={styles.limit} style={{ '--at': limitShare(limit) } as CSSProperties} />
      </div>
      <details>
        <summary>By kind of use</summary>
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Where</th>
              <th scope="col">Used</th>
              <th scope="col">Counts as</th>
            </tr>
          </thead>
          <tbody>
            {parts.map((part) => (
              <tr key={part.where}>
                <th scope="row">
                  <span className={styles.part} data-use={fillingOf(part)} aria-hidden="true" />
                  {part.where}
                </th>
                <td>{part.used === '' ? 'not read yet' : part.used}</td>
                <td>{part.used === '' ? `about ${part.counts}` : part.counts}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </div>
  );
}

const fillingOf = ({ useClass }: UsePart): string => useClass ?? 'expected';
