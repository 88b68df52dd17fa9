'use client';

import styles from './Pocket.module.css';
import { useLine } from './queue/use-line.ts';
import { waitsWords } from './waits-words.ts';

/** How much waits in this browser, and the way to them; nothing where none does. */
export function WaitsLine() {
  const line = useLine();
  if (line.commands.length === 0) return null;
  return (
    <p className={styles.waits}>
      <a href="/pocket#waiting">{waitsWords(line)}</a>
    </p>
  );
}
