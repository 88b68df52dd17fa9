import type { Drive } from './drive.ts';
import type { LevelTag } from './observe.ts';

/** Name of an entry: its id, or its place in a file that gives none. */
export type EntryRef = string | number;

/** A level as it was read: a fraction of the span from MIN, or nothing on the stick. */
export type RawLevel = number | 'none';

export type StickCondition = {
  state: 'hotIdle' | 'hotStopped' | 'cold';
  minutesAfterStop?: number | undefined;
  oilTempC?: number | undefined;
};

/** A level somebody read, and what it says where it can be compared with the car's own procedure. */
export type ReadLevel = {
  level: RawLevel;
  condition: StickCondition | null;
  /** read otherwise than by the car's procedure, and not to be corrected */
  offProcedure: boolean;
};

/** What happens to the oil, in litres from MAX (negative below). */
export type OilStep =
  | { does: 'observe'; levelL: number; sdL: number; tag: LevelTag; read: ReadLevel | null }
  /** an off-procedure level that only is listed */
  | { does: 'list'; read: ReadLevel }
  | { does: 'add'; volumeL: number; sdL: number }
  /** `change`: an oil change; else filled to MAX without a volume */
  | { does: 'reset'; levelL: number; sdL: number; change: boolean }
  | { does: 'repair' };

/** One entry that cuts a drive: what was driven since the last one, then what happened to the oil. */
export type OilOperation = { entry: EntryRef; drive: Drive; steps: readonly OilStep[] };
