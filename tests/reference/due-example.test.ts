import type { CarCase, CaseEntry, CaseItem } from '@quartermark/engine/history';
import { analyseCase } from '@quartermark/engine/wear';
import { describe, expect, it } from 'vitest';
import example from './data/due-1.json' with { type: 'json' };
import expected from './data/due-1.result.json' with { type: 'json' };

// Source: an open example of a due-date computation and its result, worked out by an independent
// implementation. Every member it gives is compared, to all digits printed.

type Loose = Record<string, unknown>;

function entryOf(raw: Loose): CaseEntry {
  const odd = (name: string) => (raw[name] as number | undefined) ?? null;
  const time = raw.time as string | undefined;
  const common = {
    id: null,
    date: raw.date as string,
    minute: time === undefined ? null : Number(time.slice(0, 2)) * 60 + Number(time.slice(3)),
    recorded: null,
    kind: raw.type as string,
    canonical: JSON.stringify(raw),
  };
  if (raw.type === 'use')
    return {
      ...common,
      type: 'use',
      useClass: raw.class as 'circuit',
      endDate: (raw.endDate as string | undefined) ?? null,
      distanceKm: odd('km'),
      hours: odd('hours'),
      sessions: odd('sessions'),
      launches: odd('launches'),
      plannedOn: (raw.plannedOn as string | undefined) ?? null,
    };
  const reads = { odometerKm: odd('odo'), hourMeterH: odd('hourMeter') };
  if (raw.type === 'reading') return { ...common, type: 'reading', ...reads };
  return { ...common, type: 'service', items: raw.items as string[], complete: false, ...reads };
}

function itemOf(raw: Loose): CaseItem {
  const start = raw.baseline as { date: string; odo?: number } | undefined;
  const limits = (list: Loose[]) =>
    list.map((limit) =>
      limit.measure === 'months' || limit.measure === 'days' ? limit : { weights: {}, ...limit },
    ) as CaseItem['limits'];
  const severe = raw.severe as (NonNullable<CaseItem['severe']> & { limits: Loose[] }) | undefined;
  return {
    id: raw.id as string,
    warnDays: (raw.warnDays ?? raw.leadDays ?? 14) as number,
    leadDays: (raw.leadDays ?? 0) as number,
    limits: limits(raw.limits as Loose[]),
    severe: severe === undefined ? null : { ...severe, limits: limits(severe.limits) },
    baseline:
      start === undefined
        ? null
        : { date: start.date, minute: null, odometerKm: start.odo ?? null, complete: false },
  };
}

const car: CarCase = {
  car: { id: example.car.id, odoDigits: example.car.odoDigits, hemisphere: 'N', roadKmh: 45 },
  asOf: example.asOf,
  entries: example.entries.map(entryOf),
  storage: example.storage.map((window, index) => ({ id: String(index), ...window })),
  planned: example.planned.map((event) => ({
    id: event.id,
    start: event.date,
    end: event.endDate ?? null,
    useClass: event.class as 'circuit',
    distanceKm: event.km,
    hours: event.hours,
    sessions: event.sessions,
    launches: null,
    attend: 0.9,
  })),
  items: example.items.map(itemOf),
};

const printed = (value: number) => Math.round(value * 1e4) / 1e4;

/** Every member of the expected document is in the found one, numbers to the four digits printed. */
function expectSame(found: unknown, wanted: unknown, path: string): void {
  if (typeof wanted === 'number') {
    expect(typeof found, path).toBe('number');
    expect(printed(found as number), path).toBe(wanted);
  } else if (Array.isArray(wanted)) {
    expect(Array.isArray(found) && found.length, path).toBe(wanted.length);
    wanted.forEach((one, index) => {
      expectSame((found as unknown[])[index], one, `${path}[${index}]`);
    });
  } else if (typeof wanted === 'object' && wanted !== null) {
    for (const [name, value] of Object.entries(wanted))
      expectSame((found as Loose | undefined)?.[name], value, `${path}.${name}`);
  } else expect(found, path).toBe(wanted);
}

describe('analyseCase() on the open example', () => {
  const analysis = analyseCase(car, { toEvents: true });

  it('names the car and the day and finds nothing odd', () => {
    expect(analysis).toMatchObject({ schema: 1, car: 'ex1', asOf: '2026-04-20' });
    expect(analysis.flags).toEqual(expected.flags);
    expect(analysis.items.map(({ id }) => id)).toEqual(expected.items.map(({ id }) => id));
  });

  it.each(expected.items)(
    'gives every amount, date and probability of $id, at the events too',
    (wanted) => {
      const found = analysis.items.find(({ id }) => id === wanted.id);
      // the reason is a sentence of our own
      const { reason, ...others } = wanted;
      expectSame(found, others, wanted.id);
      expect(found?.reason === null).toBe(reason === null);
    },
  );

  it('leaves the events out where nobody asked for them', () => {
    expect(analyseCase(car).items.some((item) => 'atEvent' in item)).toBe(false);
  });

  it('reads the odometer, with the total since the log began', () => {
    expect(analysis.odometer).toEqual({
      entry: null,
      on: '2026-04-12',
      readingKm: 47620,
      totalKm: 6420,
    });
    expect(analysis.laidUp).toBeNull();
  });
});
