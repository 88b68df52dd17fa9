'use client';

import styles from './Pocket.module.css';
import { isStuck } from './queue/command.ts';
import type { LineState } from './queue/keeper.ts';
import { useLine } from './queue/use-line.ts';

/** How many entries wait in this browser, and the way to them; nothing where none does. */
export function WaitsLine() {
  const line = useLine();
  if (line.commands.length === 0) return null;
  return (
    <p className={styles.waits}>
      <a href="/pocket#waiting">{waitsWords(line)}</a>
    </p>
  );
}

export function waitsWords({ commands, end }: Pick<LineState, 'commands' | 'end'>): string {
  const stuck = commands.filter(isStuck).length;
  const waiting = commands.length - stuck;
  const for_ = end === 'signedOut' ? 'for you to sign in' : 'for signal';
  const parts = [
    waiting > 0 && `${counted(waiting)} ${waiting === 1 ? 'waits' : 'wait'} ${for_}`,
    stuck > 0 && `${counted(stuck)} ${stuck === 1 ? 'needs' : 'need'} your decision`,
  ].filter((part): part is string => part !== false);
  return `${parts.join(', ')}.`;
}

const counted = (count: number) => (count === 1 ? '1 entry' : `${count} entries`);
