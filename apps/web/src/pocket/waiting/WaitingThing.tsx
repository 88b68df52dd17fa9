'use client';

import { type ReactNode, useState } from 'react';
import { refusalWords } from '../../client/refusal-words.ts';
import { Button, Notice } from '../../components/index.ts';
import styles from '../Pocket.module.css';
import { type Command, isStuck } from '../queue/command.ts';
import { keeper } from '../queue/keeper.ts';
import { takeOut } from '../queue/line.ts';
import { storeTrouble } from '../queue/store.ts';

export type Acting = { busy: boolean; act: (work: () => Promise<unknown>) => Promise<void> };

type WaitingThingProps = {
  command: Command;
  /** what it says */
  children: ReactNode;
  /** what can be decided where the server did not take it */
  waysOut: (acting: Acting) => ReactNode;
  /** what goes with it when it is thrown away */
  lost: string;
};

/** One thing that waits in the line, how it stands, and the ways out of there. */
export function WaitingThing({ command, children, waysOut, lost }: WaitingThingProps) {
  const [trouble, setTrouble] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);

  /** Says what went wrong at the thing it went wrong with. */
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
      {children}
      {isStuck(command) ? (
        waysOut({ busy, act })
      ) : (
        <p>{command.state === 'sending' ? 'Being sent.' : 'Waits for signal.'}</p>
      )}
      {trouble === null ? null : <Notice tone="alarm">{trouble}</Notice>}
      <ThrowAway command={command} lost={lost} busy={busy} act={act} />
    </li>
  );
}

type ThrowAwayProps = Acting & Pick<WaitingThingProps, 'command' | 'lost'>;

/** What may be on the server already cannot be thrown away here. */
function ThrowAway({ command, lost, busy, act }: ThrowAwayProps) {
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
      {lost}
    </Notice>
  );
}
