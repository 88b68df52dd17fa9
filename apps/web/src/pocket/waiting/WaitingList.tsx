'use client';

import type { PocketSheet } from '@quartermark/api/client';
import { useState } from 'react';
import { Button } from '../../components/index.ts';
import styles from '../Pocket.module.css';
import { type EntryCommand, isTick } from '../queue/command.ts';
import { keeper } from '../queue/keeper.ts';
import { useLine } from '../queue/use-line.ts';
import type { SheetCar } from '../sheet/pocket-sheet.ts';
import { goTo } from '../view-of-address.ts';
import { waitsWords } from '../waits-words.ts';
import { MendWaiting } from './MendWaiting.tsx';
import { WaitingEntry } from './WaitingEntry.tsx';
import { WaitingTick } from './WaitingTick.tsx';

/** Everything that waits in this browser, in the order of making, each with its ways out. */
export function WaitingList({ sheet }: { sheet: PocketSheet | null }) {
  const line = useLine();
  const { commands, end, sending } = line;
  const cars = sheet?.garages.flatMap((garage) => garage.cars) ?? [];
  const carOf = (carId: string | undefined): SheetCar | null =>
    cars.find(({ view }) => view.carId === carId) ?? null;
  const events = sheet?.garages.flatMap((garage) => garage.events) ?? [];
  const nameOf = (id: string): string | null =>
    events.find(({ eventId }) => eventId === id)?.event.name ?? null;
  const [mending, setMending] = useState<EntryCommand | null>(null);
  const mended = mending && carOf(mending.input.entry.car);
  if (mending && mended)
    return <MendWaiting command={mending} car={mended} onDone={() => setMending(null)} />;
  if (line.read && commands.length === 0)
    return (
      <>
        <h1>Nothing waits on this phone.</h1>
        <p>All that was recorded here has been sent.</p>
        <p className={styles.back}>
          <Button onClick={() => goTo('home')}>Back to recording</Button>
        </p>
      </>
    );
  return (
    <>
      <h1>{commands.length === 0 ? 'Looking …' : waitsWords(line)}</h1>
      {end === 'signedOut' ? (
        <p>
          You are signed out. <a href="/sign-in?to=%2Fpocket%23waiting">Sign in</a>, and it is sent.
        </p>
      ) : null}
      <ol className={styles.waiting}>
        {commands.map((command) =>
          isTick(command) ? (
            <WaitingTick
              key={command.order}
              command={command}
              eventName={nameOf(command.input.tick.eventId)}
            />
          ) : (
            <WaitingEntry
              key={command.order}
              command={command}
              car={carOf(command.input.entry.car)}
              onMend={setMending}
            />
          ),
        )}
      </ol>
      <p className={styles.back}>
        <Button busy={sending} busyWords="Sending …" onClick={() => keeper.poke()}>
          Send now
        </Button>
        <Button onClick={() => goTo('home')}>Back to recording</Button>
      </p>
    </>
  );
}
