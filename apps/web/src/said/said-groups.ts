import type { SaidCar } from '@quartermark/api/client';
import {
  intervalKey,
  isByCalendar,
  type JudgedLine,
  longestBefore,
  type SaidOutcome,
} from '@quartermark/engine/said';

/** What was said of an item between two services, and what came of it. */
export type SaidRow = {
  key: string;
  carId: string;
  carName: string;
  itemId: string;
  itemName: string;
  /** what was said the longest before; it is what counts */
  line: JudgedLine;
  /** what was said nearer the day, oldest first */
  nearer: JudgedLine[];
};

export type SaidGroup = 'missed' | 'inside' | 'open' | 'without';

export const SAID_GROUPS: readonly SaidGroup[] = ['missed', 'inside', 'open', 'without'];

export const GROUP_WORDS: Readonly<Record<SaidGroup, string>> = {
  missed: 'Outside of what was said',
  inside: 'Inside of what was said',
  open: 'Not reached yet',
  without: 'Not compared',
};

const GROUP_OF: Readonly<Record<SaidOutcome, SaidGroup>> = {
  earlier: 'missed',
  later: 'missed',
  inside: 'inside',
  open: 'open',
  doneFirst: 'without',
  notKnown: 'without',
  changed: 'without',
};

/** The rows of each group: misses the farthest off first, open ones by their likely day, others the newest first. */
export function saidGroups(cars: readonly SaidCar[]): Record<SaidGroup, SaidRow[]> {
  const rows = cars.flatMap(rowsOf);
  const of = (group: SaidGroup) => rows.filter(({ line }) => groupOf(line) === group);
  const newest = (a: SaidRow, b: SaidRow) => compare(b.line.said.saidOn, a.line.said.saidOn);
  return {
    missed: of('missed').sort((a, b) => days(b) - days(a) || newest(a, b)),
    inside: of('inside').sort(newest),
    open: of('open').sort((a, b) => compare(a.line.said.likely, b.line.said.likely)),
    without: of('without').sort(newest),
  };
}

// a day of the calendar came as it must: true, but nothing was compared
const groupOf = (line: JudgedLine): SaidGroup =>
  isByCalendar(line) ? 'without' : GROUP_OF[line.outcome];

const days = ({ line }: SaidRow) => line.daysOutside ?? 0;
const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

function rowsOf({ carId, name, items, lines }: SaidCar): SaidRow[] {
  const all = lines ?? [];
  return longestBefore(all, intervalKey).map((line) => {
    const key = intervalKey(line);
    const itemId = line.said.item;
    return {
      key,
      carId,
      carName: name,
      itemId,
      itemName: items[itemId] ?? 'Item',
      line,
      nearer: all
        .filter((other) => other !== line && intervalKey(other) === key)
        .sort((a, b) => compare(a.said.saidOn, b.said.saidOn)),
    };
  });
}
