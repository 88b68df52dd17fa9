import type { History } from '../history/build-history.ts';
import type { CarCase } from '../history/case.ts';
import type { Contribution } from '../history/contribution.ts';
import type { MeterHistory } from '../history/read-meter.ts';
import type { AmountMeasure } from '../log/item.ts';
import { type DayTable, dayTable } from './day-table.ts';
import { type PlannedOccasion, plannedOccasions } from './planned-occasions.ts';
import { type PlanningHabit, planningHabit } from './planning-habit.ts';

/** When a meter was read: everyday use is known between its first and its last reading only. */
export type MeterDays = {
  /** day numbers of the readings kept, ascending */
  readings: number[];
  /** days whose use is unknown: both ends inclusive */
  blanks: { from: number; until: number }[];
};

/** What every forecast of one car rests on. */
export type Season = {
  hemisphere: CarCase['car']['hemisphere'];
  asOfDay: number;
  /** first day of the log: the first reading or use, the first entry for a car without a meter */
  firstDay: number;
  table: DayTable;
  contributions: readonly Contribution[];
  /** logged occasions that are no everyday use, with their whole amounts */
  occasions: readonly Contribution[][];
  planned: readonly PlannedOccasion[];
  habit: PlanningHabit;
  /** last day of the storage that covers today, day number; null where it is in none */
  laidUpUntil: number | null;
  /** null: the measure has no meter, so that the log alone tells */
  meterOf(measure: AmountMeasure): MeterDays | null;
};

/** Gathers what the forecasts of a car share. */
export function seasonOf(car: CarCase, history: History): Season {
  const { asOfDay, contributions, odometer, hourMeter, storage } = history;
  const odometerDays = meterDays(odometer, history);
  const hourDays = meterDays(hourMeter, history) ?? odometerDays;
  const firstDay = Math.min(asOfDay, firstOf(history));
  return {
    hemisphere: car.car.hemisphere,
    asOfDay,
    firstDay,
    table: dayTable(firstDay, asOfDay, storage),
    contributions,
    occasions: occasionsOf(contributions),
    planned: plannedOccasions(car, contributions, asOfDay, hourMeter.kept.length > 0),
    habit: planningHabit(car),
    laidUpUntil:
      storage.find(({ from, until }) => from <= asOfDay && asOfDay <= until)?.until ?? null,
    meterOf: (measure) => (measure === 'km' ? odometerDays : measure === 'hours' ? hourDays : null),
  };
}

function firstOf({ odometer, hourMeter, contributions, timeline, asOfDay }: History): number {
  const read = [odometer.kept[0]?.day, hourMeter.kept[0]?.day].filter((day) => day !== undefined);
  if (read.length > 0) return Math.min(...read, contributions[0]?.day ?? asOfDay);
  return timeline.find(({ startingPoint }) => !startingPoint)?.day ?? asOfDay;
}

function meterDays({ kept, unknownGaps }: MeterHistory, { timeline }: History): MeterDays | null {
  if (kept.length === 0) return null;
  return {
    readings: kept.map(({ day }) => day),
    blanks: unknownGaps.map(({ after, until }) => ({
      from: after < 0 ? Number.NEGATIVE_INFINITY : (timeline[after]?.day ?? 0) + 1,
      until: timeline[until]?.day ?? 0,
    })),
  };
}

/** Shares of one use belong together: a tour of five days is one occasion. */
function occasionsOf(contributions: readonly Contribution[]): Contribution[][] {
  const byUse = new Map<number, Contribution[]>();
  for (const it of contributions) {
    if (it.useClass === 'road' || it.since !== null) continue;
    const shares = byUse.get(it.source);
    if (shares === undefined) byUse.set(it.source, [it]);
    else shares.push(it);
  }
  return [...byUse.values()];
}
