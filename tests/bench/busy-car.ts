import { addDays } from '@quartermark/engine/calendar';
import type { CarCase, CaseEntry, CaseItem, CaseLimit } from '@quartermark/engine/history';

const TODAY = '2026-06-15';
const ago = (days: number) => addDays(TODAY, -days);

/** What a case is made of: `years` of log, items of two limits each, no two of the same weights. */
export type Size = { years: number; items: number };

/**
 * A car with a reading a week, a circuit day a fortnight in summer and four events on the calendar: what a
 * busy owner's log is like.
 */
export function busyCar({ years, items }: Size): CarCase {
  const days = Math.round(365.25 * years);
  const entries: CaseEntry[] = [];
  for (let day = days; day >= 0; day -= 7) {
    entries.push({
      ...common('reading', day),
      type: 'reading',
      odometerKm: 20_000 + (days - day) * 25 + (day % 3) * 8,
      hourMeterH: null,
    });
    const month = Number(ago(day).slice(5, 7));
    if (day % 14 === 0 && month >= 4 && month <= 9) entries.push(circuit(day));
  }
  const all = Array.from({ length: items }, (_, at) => `item ${at}`);
  entries.push({
    ...common('service', 150),
    type: 'service',
    items: all,
    odometerKm: null,
    hourMeterH: null,
    complete: true,
  });
  return {
    car: { id: 'car', odoDigits: 6, hemisphere: 'N', roadKmh: 45 },
    asOf: TODAY,
    entries,
    storage: Array.from({ length: Math.ceil(years) + 1 }, (_, at) => ({
      id: `winter ${at}`,
      start: `${2026 - at}-11-15`,
      end: `${2027 - at}-03-10`,
    })),
    planned: [12, 33, 47, 75].map((day, at) => ({
      id: `event ${day}`,
      start: addDays(TODAY, day),
      end: null,
      useClass: 'circuit',
      // no two of the same size: nothing of it is spared
      distanceKm: 180 + 20 * at,
      hours: 1.8,
      sessions: 5 + at,
      launches: null,
      attend: 0.9,
    })),
    items: all.map(
      (id, at): CaseItem => ({
        id,
        warnDays: 14,
        leadDays: 3,
        limits: limitsOf(at),
        severe: null,
        baseline: null,
      }),
    ),
  };
}

function common(kind: string, day: number) {
  const date = ago(day);
  return {
    id: `${kind} ${day}`,
    date,
    minute: null,
    recorded: null,
    kind,
    canonical: `${kind} ${date}`,
  };
}

function circuit(day: number): CaseEntry {
  return {
    ...common('circuit', day),
    type: 'use',
    useClass: 'circuit',
    endDate: null,
    distanceKm: 170,
    hours: 1.7,
    sessions: 5,
    launches: null,
    plannedOn: ago(day + 40),
  };
}

const limitsOf = (at: number): CaseLimit[] => [
  { measure: 'km', value: 9000 + 500 * at, weights: { circuit: 2 + at / 8 } },
  { measure: 'sessions', value: 40 + at, weights: { circuit: 1 + at / 100 } },
];
