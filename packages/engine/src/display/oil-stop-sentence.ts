import type { VolumeUnit } from '../log/units.ts';
import type { CarOil, OilNoticeKind } from '../oil/oil-answer.ts';
import { formatDay } from './format-day.ts';
import { formatRough } from './rough-number.ts';

/**
 * What the oil asks for before the engine runs again: `none` on the stick, `low` (read at MIN, or it may be
 * below), `over` MAX. `look`: so long not looked at that nothing is known.
 */
export type OilStop = 'none' | 'low' | 'over' | 'look';

/** Null where nothing is asked, or where no look is on record. */
export function oilStopOf(oil: CarOil): OilStop | null {
  if (oil.lastLook === null) return null;
  if (oil.readLow === 'none') return 'none';
  if (oil.overNow) return 'over';
  if (oil.readLow === 'atMin') return 'low';
  if (!oil.lowNow) return null;
  // by what was assumed before anything was read, a long drive alone makes it low
  return oil.status === 'none' ? 'look' : 'low';
}

/** In a list of cars: the name of each before it. */
export const OIL_STOP_WORDS: Readonly<Record<OilStop, string>> = {
  none: 'none on the stick',
  low: 'low, or may be',
  over: 'over MAX, or may be',
  look: 'not looked at for long',
};

/** Stops that cannot wait; the others are advice. */
export function isUrgent(stop: OilStop | null): boolean {
  return stop !== null && stop !== 'look';
}

/**
 * What the oil asks for, in a sentence for the first line of a car; null where it asks nothing. The usual care,
 * common practice, no source; the maker's manual decides.
 */
export function oilStopSentence(oil: CarOil): string | null {
  const stop = oilStopOf(oil);
  const on = oil.lastLook === null ? '' : formatDay(oil.lastLook.on);
  switch (stop) {
    case null:
      return null;
    case 'none':
      return `No oil on the stick when last read, ${on}: do not start it. Look by the manual’s procedure and top up first.`;
    case 'low':
      return oil.readLow === 'atMin'
        ? `Oil at or below MIN when last read, ${on}: top up by the manual before driving.`
        : 'The oil may be below MIN: look before driving.';
    case 'over':
      return oil.readOver
        ? 'Too much oil: drain it down to MAX by the manual’s procedure, do not run it before.'
        : 'By what was poured in there may be too much oil: look before it runs, and drain down to MAX if so.';
    case 'look':
      return `Oil not looked at since ${on}, and much driven since: look before driving.`;
  }
}

/** More oil than there can be; null where nothing of that kind was seen. */
export function unexplainedRiseSentence(
  { unexplainedRise }: Pick<CarOil, 'unexplainedRise'>,
  unit: VolumeUnit,
): string | null {
  if (unexplainedRise === null) return null;
  const more = formatRough(unexplainedRise.litres, unit);
  return `${more} more oil than there can be: an unlogged top-up, or fuel or coolant in the oil? Smell and look at it, and ask before it is used hard.`;
}

/** Names of the notices, as they head a line. */
export const OIL_NOTICE_WORDS: Readonly<Record<OilNoticeKind, string>> = {
  low: 'Oil low, or may be',
  lowSoon: 'Oil low before the next look',
  useRisen: 'Uses more oil than it did',
  unexplainedRise: 'More oil than there can be',
};
