import { addDays, daysBetween } from '@quartermark/engine/calendar';
import type { DueLine, UrgentFact } from '@quartermark/engine/display';
import type { OrderBy } from '@quartermark/engine/orders';
import type { Verdict } from '@quartermark/engine/readiness';
import type { CarTonight } from '../src/facts/car-tonight.ts';
import { carOf, lineOf, oilOf, standingFor } from './lines.ts';

/** The invented garage of the scripted nights, June 2026: what is stored of its five cars on each morning. */
export const HOLLOW_LANE = { name: 'Hollow Lane', cars: ['c1', 'c2', 'c3', 'c4', 'c5'] };

type Item = {
  id: string;
  name: string;
  months?: number;
  /** the last good day */
  due: string;
  warnDays: number;
  /** known done on the morning of this day */
  doneOn?: string;
};

/** As the engine tells an item of the calendar: good through its day, overdue from the next one on. */
function itemOn(today: string, item: Item, over: Partial<DueLine> = {}): DueLine {
  const { id, name, months, due, warnDays, doneOn } = item;
  const done = doneOn !== undefined && doneOn <= today;
  const day = done ? '2028-06-30' : due;
  const left = daysBetween(today, day);
  const state = left < 0 ? 'overdue' : left <= warnDays ? 'dueSoon' : 'fine';
  const ahead = state === 'overdue' ? {} : { likely: day, early: day };
  const {
    likely: _likely,
    early: _early,
    ...line
  } = lineOf({
    id,
    name,
    state,
    binding: months === undefined ? 'date' : 'months',
    limit: months ?? null,
    day,
    overdueSince: state === 'overdue' ? addDays(day, 1) : null,
    lastDone: done ? doneOn : '2024-06-09',
  });
  return { ...line, ...ahead, ...over };
}

const TRACK_DAY = { id: 'e1', name: 'Summer track day', start: '2026-06-20', end: '2026-06-21' };

const between = (today: string, from: string, to: string) => today >= from && today <= to;
const later = (a: string, b: string) => (a > b ? a : b);

export function hollowLaneOn(today: string): CarTonight[] {
  return [brindle(today), otter(today), wren(today), sable(today), heron(today)];
}

function brindle(today: string): CarTonight {
  const fluid = {
    id: 'fluid',
    name: 'Brake fluid',
    months: 24,
    due: '2026-06-09',
    warnDays: 14,
    doneOn: '2026-06-19',
  };
  const [verdict, open]: [Verdict, string[]] =
    today < '2026-06-10'
      ? [{ word: 'notOnRecord', by: null }, ['Front pads']]
      : today < '2026-06-19'
        ? [{ word: 'canBeReady', by: later(today, '2026-06-12') }, ['Brake fluid']]
        : [{ word: 'ready', by: null }, []];
  return carOf(
    {
      id: 'c1',
      name: 'Brindle',
      known: { lines: [itemOn(today, fluid)] },
      events: [standingFor(TRACK_DAY, verdict, open)],
      // on 10 June somebody said "after Saturday"
      putOffs:
        today > '2026-06-10'
          ? [{ fact: 'c1/overdue/fluid:2024-06-09', until: '2026-06-13', grade: 0 }]
          : [],
    },
    today,
  );
}

function otter(today: string): CarTonight {
  const oil = { months: 12, due: '2026-06-22', warnDays: 7 };
  const [verdict, open]: [Verdict, string[]] =
    today < '2026-06-17'
      ? [{ word: 'ready', by: null }, []]
      : today < '2026-06-20'
        ? [{ word: 'canBeReady', by: '2026-06-19' }, ['Tyres']]
        : [{ word: 'notInTime', by: null }, ['Tyres']];
  const risen = {
    id: 'oil:useRisen:c2:x',
    kind: 'useRisen',
    entry: 'x',
    on: '2026-06-11',
  } as const;
  const answer =
    today >= '2026-06-18' ? { entry: 'y', on: '2026-06-17', words: 'It was read wrong' } : null;
  return carOf(
    {
      id: 'c2',
      name: 'Otter',
      unit: 'mi',
      known: {
        lines: [
          itemOn(today, { id: 'oil', name: 'Engine oil', ...oil }),
          itemOn(today, { id: 'filter', name: 'Oil filter', ...oil }),
        ],
        oil: {
          ...oilOf(today, today),
          notices: today >= '2026-06-12' ? [{ ...risen, answer }] : [],
        },
      },
      events: [standingFor(TRACK_DAY, verdict, open)],
    },
    today,
  );
}

/** Laid up: of its oil nobody hears, of its insurance they do. */
function wren(today: string): CarTonight {
  const insurance = {
    id: 'paper',
    name: 'Insurance',
    due: '2026-06-10',
    warnDays: 42,
    doneOn: '2026-06-16',
  };
  const oil = { id: 'oil', name: 'Engine oil', months: 12, due: '2026-05-01', warnDays: 14 };
  return carOf(
    {
      id: 'c3',
      name: 'Wren',
      known: {
        lane: { status: 'laidUp' },
        lines: [itemOn(today, oil), itemOn(today, insurance)],
        oil: oilOf('2025-10-20', null),
      },
    },
    today,
  );
}

function sable(today: string): CarTonight {
  const coolant = { id: 'coolant', name: 'Coolant', months: 48, due: '2026-06-30', warnDays: 14 };
  const order = { on: '2026-06-17', expected: '2026-06-24' };
  const parts: OrderBy =
    today < '2026-06-17'
      ? { kind: 'orderBy', day: '2026-06-24', feasible: true }
      : today < '2026-06-26'
        ? { kind: 'ordered', order, late: false }
        : { kind: 'onTheShelf', order: { ...order, arrived: '2026-06-25' } };
  const urgent: UrgentFact = {
    stop: 'doNotDrive',
    oil: null,
    since: '2026-06-13',
    what: 'do not drive, Brake hose cracked, rear left, since 13 June 2026',
  };
  return carOf(
    {
      id: 'c4',
      name: 'Sable',
      known: {
        lines: [itemOn(today, coolant, { parts, leadDays: 6 })],
        urgent: between(today, '2026-06-14', '2026-06-15') ? urgent : null,
      },
    },
    today,
  );
}

function heron(today: string): CarTonight {
  const looked =
    today < '2026-06-14' ? '2026-05-28' : today < '2026-06-23' ? '2026-06-13' : '2026-06-22';
  const failing = between(today, '2026-06-08', '2026-06-09');
  return carOf(
    {
      id: 'c5',
      name: 'Heron',
      known: {
        asOf: failing ? '2026-06-07' : today,
        oil: oilOf(looked, later(today, addDays(looked, 7))),
      },
      failedSince: failing ? '2026-06-08' : null,
    },
    today,
  );
}
