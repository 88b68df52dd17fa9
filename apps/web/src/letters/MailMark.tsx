import type { MailState } from '@quartermark/api/client';
import styles from './MailMark.module.css';

const WALL = 'M24 1v14';

/**
 * A way to a letter box: it reaches it, is dashed where it is still being gone, breaks off where it was given up;
 * what lies here alone has a box and no way. It reads without colour.
 */
export function MailMark({ state }: { state: MailState['state'] }) {
  return (
    <svg className={styles.mark} viewBox="0 0 26 16" aria-hidden="true" focusable="false">
      <Drawing state={state} />
    </svg>
  );
}

function Drawing({ state }: { state: MailState['state'] }) {
  switch (state) {
    case 'delivered':
      return (
        <>
          <path className={styles.delivered} d="M2 5.5h13V2l8 6-8 6v-3.5H2z" />
          <path className={styles.wall} d={WALL} />
        </>
      );
    case 'waiting':
      return (
        <>
          <path className={styles.waiting} d="M2 5.5h5V2l7 6-7 6v-3.5H2z" />
          <path className={styles.dashes} d="M15.5 8H23" />
          <path className={styles.wall} d={WALL} />
        </>
      );
    case 'givenUp':
      return (
        <>
          <path className={styles.givenUp} d="M2 4.5h11l-3 3.5 3 3.5H2z" />
          <path className={styles.wall} d={WALL} />
        </>
      );
    case 'notByMail':
      return <path className={styles.wall} d="M7 14V6l6-4 6 4v8z" />;
  }
}
