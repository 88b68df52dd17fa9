import styles from './Skeleton.module.css';

type SkeletonProps = {
  /** what is on its way, read out: "the garage" */
  of: string;
  /** lines of the height of a list row, so that nothing moves when the rows arrive */
  rows?: number;
};

export function Skeleton({ of, rows = 3 }: SkeletonProps) {
  return (
    <div role="status" className={styles.skeleton}>
      <span className={styles.words}>Fetching {of} …</span>
      {Array.from({ length: rows }, (_, row) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the rows are all alike and never move
        <span key={row} className={styles.row} aria-hidden="true" />
      ))}
    </div>
  );
}
