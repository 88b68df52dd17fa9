import { Notice } from '../../components/index.ts';
import styles from './Fast.module.css';

/** What can hurt somebody, its first sentence in sight: the rest opens, so that the targets stay in reach. */
export function ShortCautions({ of }: { of: readonly string[] }) {
  const [first, ...rest] = of;
  if (first === undefined) return null;
  return (
    <Notice tone="caution">
      <details className={styles.cautions}>
        <summary>{first}</summary>
        <ul>
          {rest.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
          <li>The maker’s manual, local rules and licensed practice decide.</li>
        </ul>
      </details>
    </Notice>
  );
}
