'use client';

import type { WorkLine } from '@quartermark/engine/readiness';
import { useEffect, useState } from 'react';
import { newId } from '../../client/make-id.ts';
import { refusalWords } from '../../client/refusal-words.ts';
import type { TickMade } from '../queue/command.ts';
import { keepOrSend } from '../queue/keep-or-send.ts';
import { listCommands } from '../queue/line.ts';
import { pocketDb } from '../queue/store.ts';
import { useDoors } from '../queue/use-doors.ts';
import { useLine } from '../queue/use-line.ts';
import { readSent } from '../sheet/sent-ticks.ts';
import { type OwnTick, ownTicks } from './own-ticks.ts';

type Ticked = {
  garageId: string;
  eventId: string;
  /** changes when a newer sheet came */
  sheetAt: string;
  /** by how much the garage's clock is ahead of this phone's, in milliseconds */
  aheadMs: number;
};

/** Ticks made on this phone, and how to make one. */
export function useOwnTicks({ garageId, eventId, sheetAt, aheadMs }: Ticked) {
  const doors = useDoors();
  const { commands } = useLine();
  const [own, setOwn] = useState<readonly OwnTick[]>([]);
  // of a browser that keeps nothing: sent past the line
  const [straight, setStraight] = useState<readonly TickMade[]>([]);
  const [trouble, setTrouble] = useState<string | null>(null);

  // biome-ignore lint/correctness/useExhaustiveDependencies: what is read changes with the line and the sheet
  useEffect(() => {
    let gone = false;
    void readOwn().then((read) => {
      if (!gone) setOwn(read);
    });
    return () => {
      gone = true;
    };
  }, [commands, sheetAt]);

  async function tick(line: WorkLine, done: boolean): Promise<void> {
    const madeAt = new Date(Date.now() + aheadMs).toISOString();
    const made = { tickId: newId(), eventId, carId: line.car, line: line.id, done, madeAt };
    setTrouble(null);
    try {
      const order = await keepOrSend(doors, {
        verb: 'event.tick',
        input: { tick: made, words: line.what },
        commandId: newId(),
        garageId,
        madeAt: new Date().toISOString(),
      });
      if (order === null) setStraight((all) => [...all, made]);
    } catch (error) {
      setTrouble(`Not ticked. ${refusalWords(error).message}`);
    }
  }

  const past = straight.map((one) => ({ tick: one, waits: false }));
  return { own: [...past, ...own], tick, trouble };
}

/** In one go, so that a tick on its way from the line to the server is seen in one of the two. */
async function readOwn(): Promise<OwnTick[]> {
  try {
    const db = await pocketDb();
    const commands = await listCommands(db);
    return ownTicks(await readSent(db), commands);
  } catch {
    // a browser that keeps nothing has nothing waiting
    return [];
  }
}
