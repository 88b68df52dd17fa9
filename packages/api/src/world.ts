import type { Db } from '@quartermark/db';

/** The time, passed in: nothing here reads a clock of its own. */
export type Clock = { now(): Date };

/** Where failures of the world are written for whoever keeps the server. */
export type Log = {
  warn(fields: Record<string, unknown>, message: string): void;
  error(fields: Record<string, unknown>, message: string): void;
};

/** Told when a command has come to a marked point; a test makes the process stand still there. */
export type Reached = (point: 'afterCommit') => Promise<void>;

/** What a verb works with. */
export type World = { db: Db; clock: Clock; log: Log; reached: Reached };

/** Who asks: a signed-in person; `demo` people may only use the demo garage. */
export type Asker = { userId: string; demo: boolean };
