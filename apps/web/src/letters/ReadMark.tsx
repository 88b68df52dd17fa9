import styles from './ReadMark.module.css';

/** A sheet with its flap closed and filled while it is not read, open and empty once it was. */
export function ReadMark({ read }: { read: boolean }) {
  return (
    <span className={styles.read} data-read={read}>
      <svg viewBox="0 0 22 16" aria-hidden="true" focusable="false">
        <path className={styles.sheet} d="M2 3h18v11H2z" />
        <path className={styles.flap} d={read ? 'M2 3 11 0l9 3' : 'M2 3l9 6 9-6'} />
      </svg>
      {read ? 'Read' : 'Unread'}
    </span>
  );
}
