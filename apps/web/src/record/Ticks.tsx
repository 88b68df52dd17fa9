import { joinClasses, Tick } from '../components/index.ts';
import styles from './Ticks.module.css';

type TicksProps<K extends string> = {
  legend: string;
  hint?: string;
  rows: readonly { id: K; words: string }[];
  done: readonly K[];
  onChange: (done: K[]) => void;
  error?: string | undefined;
  /** in two columns, as the corners of a car */
  corners?: boolean;
  /** what is said where there is no row */
  none?: string;
};

/** Several things that are each so or not so. The order in which they were ticked is kept. */
export function Ticks<K extends string>(props: TicksProps<K>) {
  const { legend, hint, rows, done, onChange, error, corners = false, none } = props;
  const tick = (id: K, on: boolean) =>
    onChange(on ? [...done, id] : done.filter((one) => one !== id));
  return (
    <fieldset className={joinClasses(styles.ticks, corners && styles.corners)}>
      <legend>{legend}</legend>
      {hint ? <p className={styles.hint}>{hint}</p> : null}
      {rows.length === 0 && none ? <p>{none}</p> : null}
      {rows.map(({ id, words }) => (
        <Tick key={id} label={words} checked={done.includes(id)} onChange={(on) => tick(id, on)} />
      ))}
      {error ? (
        <p role="alert" className={styles.error}>
          {error}
        </p>
      ) : null}
    </fieldset>
  );
}
