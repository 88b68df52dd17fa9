import type { ReadyMark } from '@quartermark/engine/display';
import styles from './StateMark.module.css';

/** Setting out and coming home again. */
const POSTS = 'M3 1v14M23 1v14';

/**
 * Two posts, setting out and coming home: a plank lies across where it lasts all the way; half of it with
 * the rest drawn in dashes where work will make it last; broken off where it does not; only dashes where
 * nobody wrote down whether it does.
 */
export function ReadyDrawing({ kind }: { kind: ReadyMark }) {
  return (
    <>
      <Plank kind={kind} />
      <path className={styles.limit} d={POSTS} />
    </>
  );
}

function Plank({ kind }: { kind: ReadyMark }) {
  switch (kind) {
    case 'ready':
      return <rect className={styles.fine} x={3} y={5} width={20} height={6} />;
    case 'afterWork':
      return (
        <>
          <rect className={styles.dueSoon} x={3} y={5} width={9} height={6} />
          <path className={styles.dots} d="M13.5 5.75H22M13.5 10.25H22" />
        </>
      );
    case 'notReady':
      return <path className={styles.overdue} d="M3 5h9l-3 3 2 3H3z" />;
    case 'readyUnknown':
      return <path className={styles.dashes} d="M5 8h17" />;
  }
}
