import type { StickLevel } from '@quartermark/engine/log';

/** The stick as a hand with gloves can say it, from the bottom up. */
export const ZONES = [
  { zone: 'none', words: 'None on the stick', level: { how: 'none' } },
  { zone: 'min', words: 'MIN', level: { how: 'fraction', fraction: 0, step: 0.25 } },
  { zone: 'quarter', words: 'A quarter', level: { how: 'fraction', fraction: 0.25, step: 0.25 } },
  { zone: 'half', words: 'Half', level: { how: 'fraction', fraction: 0.5, step: 0.25 } },
  {
    zone: 'threeQuarters',
    words: 'Three quarters',
    level: { how: 'fraction', fraction: 0.75, step: 0.25 },
  },
  { zone: 'max', words: 'MAX', level: { how: 'fraction', fraction: 1, step: 0.25 } },
  { zone: 'over', words: 'Over MAX', level: { how: 'over' } },
] as const satisfies readonly { zone: string; words: string; level: StickLevel }[];

export type Zone = (typeof ZONES)[number]['zone'];

/** A zone, nothing, or a level that was read finer than the zones are and stays as it was read. */
export type ZoneField = Zone | '' | 'asRead';

/** The zone a stored level is one of. @example zoneOf({ how: 'fraction', fraction: 0.6 }) // 'asRead' */
export function zoneOf(level: StickLevel | undefined): ZoneField {
  if (level === undefined) return '';
  return ZONES.find((one) => same(one.level, level))?.zone ?? 'asRead';
}

function same(zone: StickLevel, level: StickLevel): boolean {
  if (zone.how !== level.how) return false;
  return zone.how !== 'fraction' || level.how !== 'fraction' || zone.fraction === level.fraction;
}

/**
 * The level that a field stands for. What was stored stays letter for letter while its zone is not
 * changed.
 *
 * @param before the level the field was filled from
 */
export function levelOf(field: ZoneField, before: StickLevel | undefined): StickLevel | undefined {
  if (zoneOf(before) === field) return before;
  return ZONES.find(({ zone }) => zone === field)?.level;
}
