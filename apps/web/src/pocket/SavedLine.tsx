'use client';

import { entryLine } from '@quartermark/engine/display';
import { Button } from '../components/index.ts';
import styles from './Pocket.module.css';
import { isStuck } from './queue/command.ts';
import { useLine } from './queue/use-line.ts';
import type { SavedHere } from './use-pocket-save.ts';
import { goTo } from './view-of-address.ts';

type SavedLineProps = { saved: SavedHere | null; undone: boolean; undo: () => Promise<void> };

/** What was saved last, where it is now, and the way back. */
export function SavedLine({ saved, undone, undo }: SavedLineProps) {
  const { commands, sending, end } = useLine();
  const waiting = commands.find(({ order }) => order === saved?.order);
  const stuck = waiting !== undefined && isStuck(waiting);
  return (
    <div role="status" className={styles.saved}>
      {saved === null ? (
        undone ? (
          <p className={styles.savedWords}>Undone.</p>
        ) : null
      ) : (
        <>
          <p className={styles.savedWords}>
            <strong>{whereWords(waiting !== undefined, stuck, sending || end === null)}</strong>{' '}
            {lineWords(saved)}
          </p>
          {stuck ? (
            <Button onClick={() => goTo('waiting')}>See why</Button>
          ) : (
            <Button onClick={undo}>Undo</Button>
          )}
        </>
      )}
    </div>
  );
}

function whereWords(here: boolean, stuck: boolean, sending: boolean): string {
  if (!here) return 'Saved.';
  if (stuck) return 'Saved on this phone, not taken by the server.';
  return sending ? 'Saved on this phone, being sent.' : 'Saved on this phone, waits for signal.';
}

function lineWords({ entry }: SavedHere): string {
  const { title, detail } = entryLine(entry);
  return [title, detail].filter((words) => words !== '').join(', ');
}
