'use client';

import type { AppRouter, EntryView, Written } from '@quartermark/api/client';
import type { inferRouterInputs } from '@trpc/server';
import { createContext, useContext } from 'react';

type Inputs = inferRouterInputs<AppRouter>['entry'];

/** What became of an entry that was sent off. */
export type Sent =
  /** the server holds it */
  | { at: 'server'; written: Written }
  /**
   * this device keeps it until the server takes it; `undo` takes it back wherever it is then; with `stay`
   * no other page can be had now
   */
  | { at: 'device'; undo: () => Promise<void>; stay?: boolean };

/** What a form tells once its entry is away. */
export type Away = {
  /** null for an entry that is about no car */
  carId: string | null;
  entryId: string;
  sent: Sent;
  /** the way back of what the server holds; throws what it refused */
  undo: () => Promise<unknown>;
  /** what was done, if it was not saving: "Entry removed." */
  words?: string;
};

/**
 * Where entries go: straight to the server, or into a line that waits for it. Every way in carries the
 * command protocol, so that sending again cannot write twice, and throws what the server refused.
 */
export type EntryDoor = {
  record: (input: Inputs['record']) => Promise<Sent>;
  amend: (input: Inputs['amend']) => Promise<Sent>;
  remove: (input: Inputs['remove']) => Promise<Sent>;
  /** The entry as the server has it now; null where that cannot be told. */
  standing: (garageId: string, entryId: string) => Promise<EntryView | null>;
  /** Says that it is saved, with the way back, and has the pages fetched anew. */
  away: (away: Away) => void;
};

export const EntryDoorContext = createContext<EntryDoor | null>(null);

/** The door of the page. */
export function useEntryDoor(): EntryDoor {
  const door = useContext(EntryDoorContext);
  if (!door) throw new Error('useEntryDoor() is called outside of a door: put it in one');
  return door;
}
