import type { SaidOutcome } from '@quartermark/engine/said';
import styles from './SaidMark.module.css';

const BAND = 'M9 3v10M20 3v10M9 8h11';
const OPEN_BAND = 'M9 3v10M9 8h15';

/**
 * What was said as a span between two ends, and where it fell: a dot inside, before or after it; no dot
 * while nothing has happened; a cross-stroke where it was done first; dashed where nobody can tell. It reads
 * without colour.
 */
export function SaidMark({ outcome }: { outcome: SaidOutcome }) {
  return (
    <svg className={styles.mark} viewBox="0 0 29 16" aria-hidden="true" focusable="false">
      <Drawing outcome={outcome} />
    </svg>
  );
}

function Drawing({ outcome }: { outcome: SaidOutcome }) {
  switch (outcome) {
    case 'inside':
      return (
        <>
          <path d={BAND} />
          <circle className={styles.inside} cx="14.5" cy="8" r="3.5" />
        </>
      );
    case 'earlier':
      return (
        <>
          <path d={BAND} />
          <circle className={styles.missed} cx="4" cy="8" r="3.5" />
        </>
      );
    case 'later':
      return (
        <>
          <path d={BAND} />
          <circle className={styles.missed} cx="25" cy="8" r="3.5" />
        </>
      );
    case 'open':
      return <path d={OPEN_BAND} />;
    case 'doneFirst':
      return (
        <>
          <path d={BAND} />
          <path className={styles.strong} d="M2 12 6.5 4" />
        </>
      );
    case 'notKnown':
      return <path className={styles.dashes} d={BAND} />;
    case 'changed':
      return <path className={styles.dashes} d="M9 3v10M20 3v10" />;
  }
}
