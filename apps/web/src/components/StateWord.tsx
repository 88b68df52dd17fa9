import { type MarkKind, StateMark } from './StateMark.tsx';
import styles from './StateWord.module.css';

type StateWordProps = {
  kind: MarkKind;
  /** the `word` that goes with the mark, from the engine's display words */
  words: string;
  /** the figures behind it, set lighter after the word */
  detail?: string;
};

/** A state: mark and word together, the colour only in the mark. */
export function StateWord({ kind, words, detail }: StateWordProps) {
  return (
    <span className={styles.state} data-state={kind}>
      <StateMark kind={kind} />
      <span>
        {words}
        {detail ? <span className={styles.detail}>: {detail}</span> : null}
      </span>
    </span>
  );
}
