import Link from 'next/link';
import styles from './Wordmark.module.css';

/** The name, with its own sign: the lower part of a stick and the quarter mark on it. */
export function Wordmark() {
  return (
    <Link href="/" prefetch={false} className={styles.wordmark}>
      <svg viewBox="0 0 16 24" aria-hidden="true" focusable="false" className={styles.sign}>
        <path className={styles.stick} d="M8 0v24" />
        <path className={styles.oil} d="M8 17.5V24" />
        <path className={styles.notch} d="M2 4.5h12M2 11h7M2 17.5h12" />
      </svg>
      Quartermark
    </Link>
  );
}
