import Link from 'next/link';
import styles from './DemoLine.module.css';

/** Says on every page that none of this is real. */
export function DemoLine() {
  return (
    <aside aria-label="Demo" className={styles.line}>
      Demo garage: people, cars and entries are invented. <Link href="/start">Make your own</Link>
    </aside>
  );
}
