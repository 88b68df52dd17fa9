import { oilLineOf } from '@quartermark/engine/display';
import type { Book } from '@quartermark/engine/log';
import type { Answer, Engine } from '@quartermark/jobs/worker';
import { noOilYet } from '../../packages/engine/test/no-oil-yet.ts';
import { nothingOpen } from '../../packages/engine/test/nothing-open.ts';

export type PlainEngine = Engine & {
  /** how many times it was asked */
  asked: number;
  /** set to make it fail with this message */
  failWith: string | null;
};

/** An engine that only counts a book's entries: for tests of the way an answer takes, not of answers. */
export function plainEngine(version = 1): PlainEngine {
  const engine: PlainEngine = {
    version,
    asked: 0,
    failWith: null,
    answer({ car: { book } }) {
      engine.asked += 1;
      if (engine.failWith !== null) throw new Error(engine.failWith);
      return countEntries(book, version);
    },
  };
  return engine;
}

function countEntries(book: Book, engineVersion: number): Answer {
  return {
    analysis: {
      schema: 1,
      engineVersion,
      car: book.car.id,
      asOf: book.asOf,
      flags: [],
      items: [],
      laidUp: null,
      odometer: null,
      lastLevel: null,
      oil: noOilYet(),
      ...nothingOpen,
    },
    road: null,
    lane: {
      next: [],
      odometer: null,
      level: null,
      oil: null,
      laidUp: null,
      status: 'inUse',
      stop: null,
      road: null,
      open: 0,
      flags: 0,
    },
    lines: [],
    said: [],
    oil: oilLineOf(noOilYet(), null),
    urgency: book.entries.length,
    laidUp: false,
    overdue: 0,
    dueSoon: 0,
    notOnRecord: 0,
    status: 'inUse',
    stop: null,
  };
}
