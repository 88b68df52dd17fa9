import { KM_PER_UNIT } from '../log/units.ts';
import type { Flag, FlagCode } from '../wear/result.ts';
import type { CarCase } from './case.ts';
import { type Cut, cutSection } from './cut-section.ts';
import { keepReadings } from './keep-readings.ts';
import { type MeterPoint, meterSections, type Section } from './meter-sections.ts';
import type { Meter, Placed } from './placed.ts';

/** The most that is believed of one day: 2,000 km, 24 h. */
const MOST_PER_DAY = { odo: 2000, hours: 24 } as const;

export type KeptReading = MeterPoint & {
  /** readings of one segment are on one scale; between segments only an exchange leads on */
  segment: number;
};

/** Use of unknown amount: from after one position up to and including another. */
export type UnknownGap = {
  /** position of the last old reading; -1 where there is none */
  after: number;
  /** position of the first new reading */
  until: number;
};

export type MeterHistory = {
  meter: Meter;
  kept: KeptReading[];
  unknownGaps: UnknownGap[];
  /** drops that only an exchange nobody logged explains */
  unloggedExchanges: { lastOld: MeterPoint; firstNew: MeterPoint }[];
  flags: Flag[];
};

/** Full scale of the odometer in km: 10^digits of its own unit; null where the digits are unknown. */
export function fullScaleKm({ odoDigits, odoUnit }: CarCase['car']): number | null {
  return odoDigits === null ? null : 10 ** odoDigits * KM_PER_UNIT[odoUnit ?? 'km'];
}

/**
 * Reads one meter of a car: segments, the readings that are kept in each, and where use is unknown.
 *
 * @param timeline entries in order
 * @param meter the odometer (km) or the hour meter (h)
 * @param fullScale km at which the odometer starts again from zero, null if unknown
 */
export function readMeter(
  timeline: readonly Placed[],
  meter: Meter,
  fullScale: number | null,
): MeterHistory {
  const history: MeterHistory = {
    meter,
    kept: [],
    unknownGaps: [],
    unloggedExchanges: [],
    flags: [],
  };
  const flag = (code: FlagCode, { position, reading }: MeterPoint, other?: MeterPoint) =>
    history.flags.push(flagOf(timeline, meter, code, position, reading, other));

  let segment = 0;
  let before: Section | null = null;
  for (const section of meterSections(timeline, meter)) {
    const cut: Cut =
      meter === 'odo'
        ? cutSection(section.points, fullScale)
        : { segments: [section.points], lowTypos: [], unloggedExchanges: [], rollOvers: [] };
    for (const point of cut.lowTypos) flag('readingRejected', point);
    for (const point of cut.rollOvers) flag('rollOver', point);
    for (const { lastOld, firstNew } of cut.unloggedExchanges)
      flag('unloggedExchange', firstNew, lastOld);
    history.unloggedExchanges.push(...cut.unloggedExchanges);

    cut.segments.forEach((points, index) => {
      const { kept, rejected, tooFast } = keepReadings(points, MOST_PER_DAY[meter]);
      for (const point of rejected) flag('readingRejected', point);
      for (const point of tooFast) flag('readingTooFast', point);
      const first = kept[0];
      if (first === undefined) return;
      const after = history.kept.at(-1)?.position ?? -1;
      const opensSection = index === 0;
      if (!opensSection || (before !== null && !joins(before, section, after, first)))
        history.unknownGaps.push({ after, until: first.position });
      for (const point of kept) history.kept.push({ ...point, segment });
      segment += 1;
    });
    if (section.closesAt !== null && !section.lastValueGiven)
      history.flags.push(
        flagOf(timeline, meter, 'exchangeWithoutOldValue', section.closesAt, null),
      );
    before = section;
  }
  return history;
}

/** True if both values of the exchange were kept, so that nothing is unknown across it. */
function joins(before: Section, section: Section, lastKept: number, first: MeterPoint): boolean {
  const exchange = section.opensAt;
  return before.lastValueGiven && lastKept === exchange && first.position === exchange;
}

function flagOf(
  timeline: readonly Placed[],
  meter: Meter,
  code: FlagCode,
  position: number,
  value: number | null,
  other?: MeterPoint,
): Flag {
  const entry = (timeline[position] as Placed).entry;
  const unit = meter === 'odo' ? 'km' : 'h';
  return {
    code,
    entry: entry.id,
    on: entry.date,
    value: value === null ? null : `${shortNumber(value)} ${unit}`,
    ...(other && { other: (timeline[other.position] as Placed).entry.id }),
  };
}

/** A number with at most one decimal, as flags show it. */
export function shortNumber(value: number): string {
  return String(Math.round(value * 10) / 10);
}
