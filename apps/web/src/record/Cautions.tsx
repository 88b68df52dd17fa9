import { Notice } from '../components/index.ts';
import styles from './Cautions.module.css';

/** What can hurt somebody, before the work; absent where there is nothing. */
export function Cautions({ of }: { of: readonly string[] }) {
  if (of.length === 0) return null;
  return (
    <Notice tone="caution" title="With care">
      <ul className={styles.list}>
        {of.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
        <li>The maker’s manual, local rules and licensed practice decide.</li>
      </ul>
    </Notice>
  );
}
