import type { Flag } from '../wear/result.ts';
import { type Contribution, contributionOf } from './contribution.ts';
import { type Placed, positionOf } from './placed.ts';
import { type KeptReading, type MeterHistory, shortNumber } from './read-meter.ts';
import { isStored, type StorageWindow } from './storage-windows.ts';

/** Amounts closer than this are the same: shares of a day do not add up to the last bit. */
const SAME = 1e-6;

export type Filled = { road: Contribution[]; flags: Flag[] };

/**
 * Gives every interval between two kept readings of a segment its use.
 *
 * rest = max(0, difference - logged use inside), where inside means after the first reading and up to
 * the second. Where more was logged than the meter shows, estimated amounts are scaled down to fit
 * first (in place); if the given ones alone are more, that is flagged and the log wins. The rest is
 * road use, spread evenly over the days after the first reading that were not spent in storage, or
 * over all of them if there are none. The share on the last day counts with the second reading, a
 * share on an inner day before everything else of that day.
 *
 * @param uses logged shares in order; their estimated amounts may be lowered
 * @param meter its kept readings decide; km or h
 */
export function fillGaps(
  timeline: readonly Placed[],
  uses: Contribution[],
  meter: MeterHistory,
  storage: readonly StorageWindow[],
): Filled {
  const filled: Filled = { road: [], flags: [] };
  let next = 0;
  meter.kept.forEach((end, index) => {
    const inside: Contribution[] = [];
    for (; next < uses.length && (uses[next] as Contribution).position <= end.position; next += 1)
      inside.push(uses[next] as Contribution);
    const start = meter.kept[index - 1];
    if (start === undefined || start.segment !== end.segment) return;
    const shown = end.value - start.value;
    const logged = fitEstimates(inside, meter.meter, shown);
    if (logged > shown + SAME) filled.flags.push(exceeds(timeline, end, meter, logged, shown));
    const rest = shown - logged;
    if (rest > SAME)
      filled.road.push(...spreadRest(timeline, start, end, rest, meter.meter, storage));
  });
  return filled;
}

/** Scales the estimated amounts inside an interval down to what the meter leaves; returns the sum. */
function fitEstimates(
  inside: readonly Contribution[],
  meter: 'odo' | 'hours',
  shown: number,
): number {
  const field = meter === 'odo' ? 'distanceKm' : 'hours';
  const mark = meter === 'odo' ? 'distanceEstimated' : 'hoursEstimated';
  let given = 0;
  let estimated = 0;
  for (const it of inside) {
    if (it[mark]) estimated += it[field];
    else given += it[field];
  }
  if (estimated === 0 || given + estimated <= shown) return given + estimated;
  const scale = Math.max(0, shown - given) / estimated;
  for (const it of inside) if (it[mark]) it[field] *= scale;
  return given + estimated * scale;
}

function spreadRest(
  timeline: readonly Placed[],
  start: KeptReading,
  end: KeptReading,
  rest: number,
  meter: 'odo' | 'hours',
  storage: readonly StorageWindow[],
): Contribution[] {
  const all: number[] = [];
  for (let day = start.day + 1; day <= end.day; day += 1) all.push(day);
  const driven = all.filter((day) => !isStored(storage, day));
  // two readings of one day have no day between them: the rest belongs to that day
  const days = driven.length > 0 ? driven : all.length > 0 ? all : [end.day];
  const amount = rest / days.length;
  const share = {
    distanceKm: meter === 'odo' ? amount : 0,
    hours: meter === 'hours' ? amount : 0,
    sessions: 0,
    launches: 0,
    distanceEstimated: false,
    hoursEstimated: false,
    hoursOpen: meter === 'odo',
  };
  return days.map((day) => {
    const position = day === end.day ? end.position : positionOf(timeline, day, -1, 0) - 0.5;
    return contributionOf(share, {
      day,
      position,
      useClass: 'road',
      source: end.position,
      since: start.position,
    });
  });
}

function exceeds(
  timeline: readonly Placed[],
  end: KeptReading,
  { meter }: MeterHistory,
  logged: number,
  shown: number,
): Flag {
  const entry = (timeline[end.position] as Placed).entry;
  const unit = meter === 'odo' ? 'km' : 'h';
  return {
    code: 'loggedExceedsMeter',
    entry: entry.id,
    on: entry.date,
    value: `${shortNumber(logged)} ${unit} logged, ${shortNumber(shown)} ${unit} by the meter`,
  };
}
