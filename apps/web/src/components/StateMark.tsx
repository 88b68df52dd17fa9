import type { ItemMark, ReadyMark } from '@quartermark/engine/display';
import { ReadyDrawing } from './ReadyDrawing.tsx';
import styles from './StateMark.module.css';

export type MarkKind = ItemMark | ReadyMark | 'laidUp';

const LIMIT = 'M19 1v14';
const COVERS = 'M2 2.5h22M2 13.5h22';

const bar = (width: number) => ({ x: 2, y: 4.5, width, height: 7 });

/**
 * A short rule that runs towards a limit line: past it, close to it, well before it; with an open end
 * where the rest is not known, dashed where nothing is; between two covers while the car is laid up.
 * Readiness has a drawing of its own. It reads without colour.
 */
export function StateMark({ kind }: { kind: MarkKind }) {
  return (
    <svg className={styles.mark} viewBox="0 0 26 16" aria-hidden="true" focusable="false">
      <Drawing kind={kind} />
    </svg>
  );
}

function Drawing({ kind }: { kind: MarkKind }) {
  switch (kind) {
    case 'overdue':
      return (
        <>
          <rect className={styles.overdue} {...bar(22.5)} />
          <path className={styles.limit} d={LIMIT} />
        </>
      );
    case 'dueSoon':
      return (
        <>
          <path className={styles.limit} d={LIMIT} />
          <rect className={styles.dueSoon} {...bar(14)} />
        </>
      );
    case 'inLimits':
      return (
        <>
          <path className={styles.limit} d={LIMIT} />
          <rect className={styles.fine} {...bar(6)} />
        </>
      );
    case 'noDate':
      return (
        <>
          <path className={styles.limit} d={LIMIT} />
          <path d="M8 4.5H2v7h6" />
          <path className={styles.dots} d="M10.5 4.5h5M10.5 11.5h5" />
        </>
      );
    case 'atLeast':
      return (
        <>
          <path className={styles.limit} d={LIMIT} />
          <path className={styles.solid} d="M2 4.5h8v7H2z" />
          <path className={styles.dots} d="M12.5 4.5h5M12.5 11.5h5" />
        </>
      );
    case 'notOnRecord':
      return (
        <>
          <path className={styles.limit} d={LIMIT} />
          <path className={styles.dashes} d="M2 8h14" />
        </>
      );
    case 'beforeItWakes':
      return (
        <>
          <path className={styles.limit} d={COVERS} />
          <rect {...bar(22)} y={5.5} height={5} />
        </>
      );
    case 'ready':
    case 'afterWork':
    case 'notReady':
    case 'readyUnknown':
      return <ReadyDrawing kind={kind} />;
    case 'laidUp':
      return <path className={styles.limit} d={COVERS} />;
  }
}
