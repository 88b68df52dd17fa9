import styles from './Board.module.css';

/** How the board is read, in words; on a phone the lanes are a list that needs none. */
export function BoardKey() {
  return (
    <p className={styles.key}>
      A mark stands on the day something is likely due; the thin line reaches back to the day it
      could be as early as. A lane shows what comes next and what may fall due before the car’s next
      event.
    </p>
  );
}
