import type { Book } from '../log/book.ts';
import type { Entry, ReadingCondition, StickLevel } from '../log/entry.ts';
import { volumeL } from '../log/quantity.ts';
import { sortEntries } from '../log/sort-entries.ts';
import { isOnStick } from '../log/stick.ts';
import { judgeStick } from '../oil/index.ts';
import type { Flag, LastLevel } from '../wear/result.ts';
import { stickCarOf } from './book-oil.ts';

type Level = Pick<LastLevel, 'fraction' | 'mark'>;

/** A level as a fraction of the span; null where litres cannot be placed on it. */
function levelOf(read: StickLevel, spanL: number | undefined): Level | null {
  switch (read.how) {
    case 'none':
    case 'over':
      return { fraction: null, mark: read.how };
    case 'fraction':
      return { fraction: read.fraction, mark: null };
    case 'fromMax': {
      if (spanL === undefined) return null;
      const fraction = 1 + read.litres / spanL;
      return isOnStick(fraction) ? { fraction, mark: null } : null;
    }
  }
}

/** An entry's part in the level, in the order in which it happened. */
type Step =
  | { do: 'read'; level: StickLevel; condition: ReadingCondition | undefined }
  | { do: 'add'; litres: number }
  | { do: 'change' };

function read(level: StickLevel | undefined, condition?: ReadingCondition): Step[] {
  return level === undefined ? [] : [{ do: 'read', level, condition }];
}

function stepsOf(entry: Entry): Step[] {
  if (entry.kind === 'oilCheck') return read(entry.level, entry.condition);
  if (entry.kind === 'oilTopUp')
    return [
      ...read(entry.levelBefore, entry.condition),
      { do: 'add', litres: entry.volume === undefined ? 0 : volumeL(entry.volume) },
      ...read(entry.levelAfter, entry.condition),
    ];
  if (entry.kind === 'oilChange')
    return [{ do: 'change' }, ...read(entry.levelAfter, entry.condition)];
  return [];
}

function unusable(entry: Entry, level: StickLevel): Flag {
  const litres = level.how === 'fromMax' ? level.litres : 0;
  return { code: 'valueIgnored', entry: entry.id, on: entry.on, value: `${litres} l from MAX` };
}

type Taken = { entry: Entry; step: Step; level: Level | null };

function steps(book: Book): Taken[] {
  const entries = book.entries.filter((entry) => !entry.removed && entry.on <= book.asOf);
  return sortEntries(entries).flatMap((entry) =>
    stepsOf(entry).map((step) => {
      const level = step.do === 'read' ? levelOf(step.level, book.car.profile.oilSpanL) : null;
      return { entry, step, level };
    }),
  );
}

/**
 * The last level read on the stick, as read, with what was poured in since; no estimate. Litres from
 * MAX become `1 + litres / span`; without the span in the car's profile, or outside -0.5..1.6 spans,
 * they are set aside with a flag.
 *
 * @param book entries after its `asOf` and tombstones do not count
 */
export function lastLevel(book: Book): { lastLevel: LastLevel | null; flags: Flag[] } {
  const taken = steps(book);
  const flags = taken.flatMap(({ entry, step, level }) =>
    step.do === 'read' && level === null ? [unusable(entry, step.level)] : [],
  );
  const at = taken.findLastIndex(({ level }) => level !== null);
  const found = taken[at];
  if (found === undefined || found.level === null || found.step.do !== 'read')
    return { lastLevel: null, flags };
  const since = taken.slice(at + 1).map(({ step }) => step);
  const litres = since.map((step) => (step.do === 'add' ? step.litres : 0));
  const { is } = judgeStick(stickCarOf(book), found.step.condition ?? null);
  const last = {
    entry: found.entry.id,
    on: found.entry.on,
    ...found.level,
    // a little early after the stop is by the procedure, only less sure
    offProcedure: is === 'off' || is === 'corrected',
    addedSinceL: litres.reduce((sum, one) => sum + one, 0),
    changedSince: since.some((step) => step.do === 'change'),
  };
  return { lastLevel: last, flags };
}
