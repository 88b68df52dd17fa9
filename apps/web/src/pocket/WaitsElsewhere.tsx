import styles from './Pocket.module.css';
import { WaitsLine } from './WaitsLine.tsx';

/** On the pages of a garage: what waits in this browser does not show there yet. */
export function WaitsElsewhere() {
  return (
    <div className={styles.elsewhere}>
      <WaitsLine />
    </div>
  );
}
