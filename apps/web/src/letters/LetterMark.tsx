import type { LetterMark as Kind } from '@quartermark/digest';
import styles from './LetterMark.module.css';

/**
 * The marks of a letter, the same shapes as by mail: a square stops, a triangle is overdue, a diamond comes soon, an
 * open ring is not known, a full disc is good. They read without colour; a word always stands beside.
 */
export function LetterMark({ kind }: { kind: Kind }) {
  return (
    <svg className={styles.mark} viewBox="0 0 16 16" aria-hidden="true" focusable="false">
      <Drawing kind={kind} />
    </svg>
  );
}

function Drawing({ kind }: { kind: Kind }) {
  switch (kind) {
    case 'stop':
      return <path className={styles.overdue} d="M2 2h12v12H2z" />;
    case 'overdue':
      return <path className={styles.overdue} d="M8 2 15 14H1z" />;
    case 'soon':
      return <path className={styles.soon} d="m8 1 7 7-7 7-7-7z" />;
    case 'unknown':
      return <circle className={styles.unknown} cx="8" cy="8" r="6" />;
    case 'good':
      return <circle className={styles.good} cx="8" cy="8" r="6" />;
  }
}
