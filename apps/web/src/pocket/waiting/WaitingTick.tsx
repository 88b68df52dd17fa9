'use client';

import { newId } from '../../client/make-id.ts';
import { Button, Notice } from '../../components/index.ts';
import styles from '../Pocket.module.css';
import type { TickCommand } from '../queue/command.ts';
import { keeper } from '../queue/keeper.ts';
import { askInstead } from '../queue/line.ts';
import { WaitingThing } from './WaitingThing.tsx';

type WaitingTickProps = {
  command: TickCommand;
  /** null: the event is none that this phone keeps */
  eventName: string | null;
};

/** A tick that waits, or that the server did not take: an event that was removed has no list of work. */
export function WaitingTick({ command, eventName }: WaitingTickProps) {
  const { tick, words } = command.input;
  return (
    <WaitingThing
      command={command}
      lost="It cannot be brought back."
      waysOut={({ busy, act }) => (
        <Notice
          tone="alarm"
          title="Not taken by the server."
          actions={
            <Button
              busy={busy}
              onClick={() =>
                act(() => keeper.act((db) => askInstead(db, command.order, newId(), () => ({}))))
              }
            >
              Try again
            </Button>
          }
        >
          {command.refusal?.message}
        </Notice>
      )}
    >
      <p>
        <strong>{tick.done ? 'Done' : 'Not done after all'}</strong>, {words}
      </p>
      {eventName === null ? null : <p className={styles.small}>{eventName}</p>}
    </WaitingThing>
  );
}
