import type { StickLevel } from '@quartermark/engine/log';
import { LITRES_PER_UNIT } from '@quartermark/engine/units';
import type { CarLog } from './car-log.ts';

type Habits = {
  random: () => number;
  /** litres between MIN and MAX */
  spanL: number;
  /** litres used per 1,000 km */
  useLPer1000Km: number;
  /** distance between two levels the owner tells apart, in spans */
  step: number;
  unit: 'l' | 'usQt';
  /** days between two looks, shortest and longest */
  everyDays: readonly [number, number];
  product: string;
  condition?: { state: 'hotIdle' | 'hotStopped' | 'cold'; minutesAfterStop?: number };
  notes: readonly string[];
};

export type OilWatch = {
  /** a look at the stick; low oil is topped up a quarter of an hour later */
  look(day: number, time: string, withOdometer?: boolean): void;
  /** every so many days between two days, but not on days that `skip` names */
  regularly(from: number, to: number, skip?: (day: number) => boolean): void;
  /** an oil change, after which the stick shows MAX */
  changed(day: number, time: string): void;
  /** writes all of it into the book, in order of time */
  write(): void;
};

type Visit = { day: number; time: string; withOdometer: boolean; change: boolean };

const TIMES = ['08:20', '09:10', '10:40', '17:45', '18:30'] as const;

/** Writes the oil checks and top-ups of one car: a level that falls with distance, read by an owner. */
export function watchOil(log: CarLog, habits: Habits): OilWatch {
  const { random } = habits;
  const visits: Visit[] = [];
  const pick = <T>(list: readonly T[]) => list[Math.floor(random() * list.length)];
  const read = (level: number): StickLevel => {
    const seen = Math.round((level + (random() - 0.5) * 0.1) / habits.step) * habits.step;
    return {
      how: 'fraction',
      fraction: Math.min(1, Math.max(0, Math.round(seen * 100) / 100)),
      step: habits.step,
    };
  };
  const condition = habits.condition === undefined ? {} : { condition: habits.condition };

  function topUp(day: number, time: string, level: number): void {
    const litres = (1 - level) * habits.spanL;
    const bottles = Math.max(1, Math.round(litres / LITRES_PER_UNIT[habits.unit] / 0.25)) * 0.25;
    const note = pick(habits.notes);
    log.record(
      { day, time: time.replace(/\d\d$/, (minute) => String(Math.min(59, Number(minute) + 15))) },
      {
        kind: 'oilTopUp',
        volume: { text: String(bottles), unit: habits.unit },
        product: habits.product,
        ...(random() < 0.4 && note !== undefined ? { note } : {}),
      },
    );
  }

  return {
    look(day, time, withOdometer = true) {
      visits.push({ day, time, withOdometer, change: false });
    },
    regularly(from, to, skip = () => false) {
      const [least, most] = habits.everyDays;
      for (let day = from; day <= to; day += least + Math.floor(random() * (most - least + 1))) {
        const time = pick(TIMES) ?? '09:00';
        const withOdometer = random() < 0.6;
        if (!skip(day)) visits.push({ day, time, withOdometer, change: false });
      }
    },
    changed(day, time) {
      visits.push({ day, time, withOdometer: false, change: true });
    },
    write() {
      let level = 0.9;
      let lastKm = 0;
      const ordered = visits.toSorted((a, b) => a.day - b.day || a.time.localeCompare(b.time));
      for (const { day, time, withOdometer, change } of ordered) {
        const km = log.travelledKm(day, time);
        level -= (((km - lastKm) / 1000) * habits.useLPer1000Km) / habits.spanL;
        lastKm = km;
        if (change) {
          level = 1;
          continue;
        }
        const odometer = withOdometer ? { odometer: log.odometer(day, time) } : {};
        log.record(
          { day, time },
          { kind: 'oilCheck', level: read(level), ...condition, ...odometer },
        );
        if (level <= 0.5) {
          topUp(day, time, level);
          level = 1;
        }
      }
    },
  };
}
