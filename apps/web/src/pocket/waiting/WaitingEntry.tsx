'use client';

import { entryLine } from '@quartermark/engine/display';
import { useState } from 'react';
import { refusalWords } from '../../client/refusal-words.ts';
import { Button, Notice } from '../../components/index.ts';
import { dayWords } from '../../record/day-words.ts';
import styles from '../Pocket.module.css';
import { type Command, isStuck } from '../queue/command.ts';
import { keeper } from '../queue/keeper.ts';
import { takeOut } from '../queue/line.ts';
import { storeTrouble } from '../queue/store.ts';
import type { SheetCar } from '../sheet/pocket-sheet.ts';
import { WaysOut } from './WaysOut.tsx';

type WaitingEntryProps = {
  command: Command;
  car: SheetCar | null;
  onMend: (command: Command) => void;
};

const DOES: Readonly<Record<Command['verb'], string>> = {
  'entry.record': '',
  'entry.amend': 'Amended: ',
  'entry.remove': 'Removed: ',
};

/** One thing that waits: what it says, why it still waits, and what can be done about it. */
export function WaitingEntry({ command, car, onMend }: WaitingEntryProps) {
  const { entry } = command.input;
  const { title, detail } = entryLine(entry, car?.view.items ?? []);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);

  /** Says what went wrong at the entry it went wrong with. */
  async function act(work: () => Promise<unknown>) {
    setBusy(true);
    setTrouble(null);
    try {
      await work();
    } catch (error) {
      const { refusal, message } = refusalWords(error);
      setTrouble(refusal ? message : storeTrouble(error));
    } finally {
      setBusy(false);
    }
  }

  return (
    <li className={styles.waitingEntry}>
      <p>
        <strong>
          {DOES[command.verb]}
          {title}
        </strong>
        {detail === '' ? '' : `, ${detail}`}
      </p>
      {entry.note === undefined ? null : <p>{entry.note}</p>}
      <p className={styles.small}>
        {[car?.view.car.name, dayWords(entry)].filter(Boolean).join(', ')}
      </p>
      {isStuck(command) ? (
        <WaysOut {...{ command, car, busy, act, onMend }} />
      ) : (
        <p>{command.state === 'sending' ? 'Being sent.' : 'Waits for signal.'}</p>
      )}
      {trouble === null ? null : <Notice tone="alarm">{trouble}</Notice>}
      <ThrowAway command={command} busy={busy} act={act} />
    </li>
  );
}

type ThrowAwayProps = {
  command: Command;
  busy: boolean;
  act: (work: () => Promise<unknown>) => Promise<void>;
};

/** What may be on the server already cannot be thrown away here. */
function ThrowAway({ command, busy, act }: ThrowAwayProps) {
  const [asked, setAsked] = useState(false);
  if (command.state === 'sending' || command.mayBeDone) return null;
  if (!asked) return <Button onClick={() => setAsked(true)}>Throw away</Button>;
  return (
    <Notice
      tone="alarm"
      title="Throw this away? What stands above is then nowhere."
      actions={
        <>
          <Button
            busy={busy}
            onClick={() => act(() => keeper.act((db) => takeOut(db, command.order)))}
          >
            Yes, throw it away
          </Button>
          <Button onClick={() => setAsked(false)}>Keep it</Button>
        </>
      }
    >
      {(command.input.entry.photos ?? []).length > 0
        ? 'Its photos go with it.'
        : 'It cannot be brought back.'}
    </Notice>
  );
}
