import type { Entry } from '../log/entry.ts';
import type { Ledger } from '../wear/ledger.ts';
import type { Fits } from './fit-windows.ts';
import type { LifeStart } from './life-start.ts';
import type { Merged } from './merge-timelines.ts';
import type { PlacedWindow } from './part-ledger.ts';
import type { GearBook } from './result.ts';

/** A gear with all that was worked out of it. */
export type Part = {
  book: GearBook;
  own: readonly Entry[];
  fits: Fits;
  windows: readonly PlacedWindow[];
  merged: Merged;
  ledger: Ledger;
  start: LifeStart | null;
};
