import { daysBetween } from '../calendar/add.ts';
import type { Horizon, JudgedLine, SaidTally, Share } from './result.ts';

/** How many dates of a forecast should fall between its early and its late day. */
const SHARE_MEANT = 0.8;
/** Below this what is said is too narrow. Source: the calibration rule of the forecast's study. */
const SHARE_LEAST = 0.75;
/** Fewer verdicts than this tell nothing. */
export const VERDICTS_LEAST = 10;

export const HORIZONS: readonly Horizon[] = ['under30', 'from30', 'over90'];

/** How far ahead the likely day lay. @example horizonOf(said) // 'under30' */
export function horizonOf({ saidOn, likely }: JudgedLine['said']): Horizon {
  const days = daysBetween(saidOn, likely);
  if (days < 30) return 'under30';
  return days <= 90 ? 'from30' : 'over90';
}

/**
 * Counts verdicts. Many weeks of one item are not as many proofs: between two services an item counts
 * once, with what was said the longest before; by horizon once in each of them, with what was said the
 * longest before among those. What has become another matter (`changed`) counts only where nothing else
 * was said of that interval.
 *
 * A day of the calendar that came as it must is true but proves nothing, and is counted apart; where a
 * limit was reached before it, that is a miss like any other.
 *
 * too narrow = inside / verdicts < 0.75 with at least 10 verdicts; by how much = the fewest whole days d
 * such that at least 8 in 10 lie between early - d and late + d.
 *
 * @param lines of any number of cars, in any order
 */
export function tallySaid(lines: readonly JudgedLine[]): SaidTally {
  const counting = longestBefore(lines, intervalKey);
  const count = (outcome: JudgedLine['outcome']) =>
    counting.filter((line) => line.outcome === outcome).length;
  const shares = HORIZONS.map((horizon) => {
    const within = lines.filter(({ said }) => horizonOf(said) === horizon);
    return [horizon, shareOf(longestBefore(within, intervalKey))] as const;
  });
  return {
    ...shareOf(counting),
    earlier: count('earlier'),
    later: count('later'),
    byCalendar: counting.filter(isByCalendar).length,
    open: count('open'),
    doneFirst: count('doneFirst'),
    notKnown: count('notKnown'),
    changed: count('changed'),
    horizons: Object.fromEntries(shares) as Record<Horizon, Share>,
    tooNarrow: tooNarrow(counting),
  };
}

/** What was said between the same two services of an item. */
export const intervalKey = ({ said }: JudgedLine): string =>
  `${said.car} ${said.item} ${said.since ?? ''}`;

/**
 * The lines that a tally needs, and no more: of each interval the one said first in each horizon. The tally
 * of these is that of all lines.
 */
export function countingLines(lines: readonly JudgedLine[]): JudgedLine[] {
  return longestBefore(lines, (line) => `${intervalKey(line)} ${horizonOf(line.said)}`);
}

/** One line for each key: the one said first; one that still compares before one that does not. */
export function longestBefore(
  lines: readonly JudgedLine[],
  keyOf: (line: JudgedLine) => string,
): JudgedLine[] {
  const first = new Map<string, JudgedLine>();
  for (const line of lines) {
    const key = keyOf(line);
    const other = first.get(key);
    if (other === undefined || comesBefore(line, other)) first.set(key, line);
  }
  return [...first.values()];
}

function comesBefore(a: JudgedLine, b: JudgedLine): boolean {
  const [unlike, other] = [a.outcome === 'changed', b.outcome === 'changed'];
  return unlike === other ? a.said.saidOn < b.said.saidOn : other;
}

/** A limit that is a day of the calendar, said without any doubt, and it came to that. */
export function isByCalendar({ said, outcome }: JudgedLine): boolean {
  return outcome === 'inside' && said.early === said.late;
}

const isVerdict = (line: JudgedLine) => line.daysOutside !== null && !isByCalendar(line);

function shareOf(lines: readonly JudgedLine[]): Share {
  const verdicts = lines.filter(isVerdict);
  return {
    inside: verdicts.filter(({ outcome }) => outcome === 'inside').length,
    verdicts: verdicts.length,
  };
}

function tooNarrow(lines: readonly JudgedLine[]): SaidTally['tooNarrow'] {
  const verdicts = lines.filter(isVerdict);
  const { inside } = shareOf(verdicts);
  if (verdicts.length < VERDICTS_LEAST || inside / verdicts.length >= SHARE_LEAST) return null;
  const byDays = verdicts.toSorted((a, b) => (a.daysOutside ?? 0) - (b.daysOutside ?? 0));
  const needed = byDays.slice(0, Math.ceil(SHARE_MEANT * verdicts.length));
  return {
    days: needed.at(-1)?.daysOutside ?? 0,
    atLeast: needed.some(({ atLeast }) => atLeast),
  };
}
