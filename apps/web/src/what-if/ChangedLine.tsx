import { movedWords, type Standing, sideWords } from '@quartermark/engine/display';
import type { WhatIfLine } from '@quartermark/engine/what-if';
import { StateWord } from '../components/index.ts';
import styles from './WhatIfAnswer.module.css';

type ChangedLineProps = { line: WhatIfLine; on: Standing };

/** An item whose dates move: as it stands and with what was added, side by side where there is room. */
export function ChangedLine({ line, on }: ChangedLineProps) {
  const moved = movedWords(line);
  return (
    <li className={styles.changed}>
      <div>
        <h3>{line.name}</h3>
        {moved === null ? null : <p className={styles.moved}>{moved}</p>}
      </div>
      <Side label="As it stands" words={sideWords(line.before, on)} />
      <Side label="With it added" words={sideWords(line.after, on)} />
    </li>
  );
}

type SideProps = { label: string; words: ReturnType<typeof sideWords> };

function Side({ label, words: { mark, word, detail } }: SideProps) {
  return (
    <p className={styles.side}>
      <span className={styles.label}>{label}</span>
      <StateWord kind={mark} words={word} detail={detail} />
    </p>
  );
}
