import { describe, expect, test } from 'vitest';
import { analyseBook } from '../index.ts';
import { type BookDraft, book, type EntryDraft } from '../log/index.ts';

type Bare<T> = T extends unknown ? Omit<T, 'id' | 'zone' | 'car'> : never;
type Line = Bare<EntryDraft> & { id?: string; removed?: boolean; revision?: number };

const ITEMS: BookDraft['items'] = [
  {
    id: 'fluid',
    name: 'Brake fluid',
    limits: [{ measure: 'months', value: 24 }],
    baseline: { on: '2026-01-01' },
    triggers: { incidents: ['softPedal'] },
  },
  {
    id: 'oil',
    name: 'Engine oil',
    limits: [{ measure: 'months', value: 12 }],
    triggers: { oilHotterThanC: 130 },
  },
  {
    id: 'fasteners',
    name: 'Wheel fasteners',
    limits: [{ measure: 'months', value: 24 }],
    baseline: { on: '2026-01-01' },
    triggers: { wheelsOff: true },
  },
  {
    id: 'look',
    name: 'Leak look',
    limits: [{ measure: 'days', value: 7 }],
    baseline: { on: '2026-05-01' },
    once: true,
  },
  {
    id: 'cabin',
    name: 'Cabin filter',
    limits: [{ measure: 'months', value: 24 }],
    dueSince: '2026-06-01',
  },
];

function bookOf(lines: readonly Line[], profile: BookDraft['car']['profile'] = {}) {
  return book.parse({
    format: 'log/1',
    asOf: '2026-06-15',
    garage: { zone: 'Europe/London' },
    car: { id: 'car', unit: 'km', profile },
    items: ITEMS,
    layUps: [],
    planned: [],
    entries: lines.map((line, index) => ({
      id: `e${index}`,
      zone: 'Europe/London',
      car: 'car',
      recorded: index + 1,
      ...line,
    })),
  });
}

const ask = (lines: readonly Line[], profile?: BookDraft['car']['profile']) =>
  analyseBook(bookOf(lines, profile));
const item = (lines: readonly Line[], id: string) => {
  const found = ask(lines).items.find((each) => each.id === id);
  return [found?.state, found?.reasonCode, found?.trigger?.entry];
};
const hose: Line = { kind: 'finding', on: '2026-06-01', what: 'Hose', severity: 'doNotDrive' };
const soft: Line = { kind: 'incident', on: '2026-06-10', time: '14:00', what: 'softPedal' };

describe('findOpen()', () => {
  test('findOpen() gives the worst finding first and incidents with their list', () => {
    const { findings, incidents } = ask([
      { kind: 'finding', on: '2026-05-01', what: 'Scratch', severity: 'cosmetic' },
      { kind: 'finding', on: '2026-05-03', what: 'Boot', severity: 'beforeHardUse' },
      {
        kind: 'finding',
        on: '2026-05-04',
        what: 'Play',
        severity: 'beforeHardUse',
        dueBy: '2026-06-20',
      },
      hose,
      soft,
    ]).matters;
    expect(findings.map(({ what }) => what)).toEqual(['Hose', 'Play', 'Boot', 'Scratch']);
    expect(incidents.map(({ what }) => what)).toEqual(['softPedal']);
    expect(incidents[0]?.lines.length).toBeGreaterThan(3);
  });

  test('findOpen() leaves out what was answered, resolved or removed, and not what will be', () => {
    const answer = (notice: string, on: string): Line => ({
      kind: 'answer',
      on,
      notice,
      answer: 'Done',
    });
    const open = (lines: readonly Line[]) => {
      const { findings, incidents } = ask(lines).matters;
      return findings.length + incidents.length;
    };
    expect(open([hose, soft])).toBe(2);
    expect(open([hose, soft, answer('e0', '2026-06-14'), answer('e1', '2026-06-14')])).toBe(0);
    expect(open([{ ...hose, resolvedBy: 'x' } as Line])).toBe(0);
    expect(open([{ ...hose, removed: true }])).toBe(0);
    expect(open([hose, { ...answer('e0', '2026-06-02'), removed: true }])).toBe(1);
    expect(open([hose, answer('e0', '2026-06-16')])).toBe(1);
  });
});

describe('wheelsState()', () => {
  const off: Line = { kind: 'wheels', on: '2026-06-01', time: '10:00', change: 'off' };
  const torqued: Line = { ...off, time: '12:00', change: 'torqued' } as Line;
  const session: Line = {
    kind: 'session',
    on: '2026-06-02',
    use: 'circuit',
    sessions: 1,
    distance: { text: '20', unit: 'km' },
  };
  const state = (lines: readonly Line[]) => ask(lines).matters.wheels;

  test('wheelsState() follows wheels off, torqued, driven and checked again', () => {
    expect(state([]).state).toBe('notOnRecord');
    expect(state([off]).state).toBe('off');
    expect(state([off, torqued])).toMatchObject({
      state: 'torqued',
      entry: 'e1',
      sinceSessions: 0,
    });
    expect(state([off, torqued, session])).toMatchObject({
      state: 'recheckDue',
      sinceKm: 20,
      sinceSessions: 1,
    });
    const again: Line = { kind: 'wheels', on: '2026-06-02', time: '18:00', change: 'rechecked' };
    expect(state([off, torqued, session, again]).state).toBe('rechecked');
  });

  test('wheelsState() asks for a check at 80 km on the road, and not before', () => {
    const road = (km: string): Line => ({
      kind: 'drive',
      use: 'road',
      on: '2026-06-03',
      distance: { text: km, unit: 'km' },
    });
    expect(state([torqued, road('79')]).state).toBe('torqued');
    expect(state([torqued, road('80')]).state).toBe('recheckDue');
  });

  test('wheelsState() follows the corners apart and says the worst', () => {
    const front: Line = { ...torqued, which: ['frontLeft', 'frontRight'] } as Line;
    expect(state([off, front])).toMatchObject({ state: 'off', corners: ['rearLeft', 'rearRight'] });
  });
});

describe('wakeSteps()', () => {
  const layUp: Line = {
    kind: 'layUp',
    on: '2026-01-01',
    lines: [
      { what: 'Exhaust', how: 'plugged' },
      { what: 'Battery', how: 'disconnected' },
    ],
    keysAt: 'hook 3',
  };

  test('wakeSteps() brings back each line until a wake-up names it', () => {
    const steps = (lines: readonly Line[]) => ask(lines).matters.wakeSteps.map(({ what }) => what);
    expect(steps([layUp])).toEqual(['Exhaust', 'Battery']);
    const half: Line = {
      kind: 'wakeUp',
      on: '2026-04-01',
      lines: [{ what: 'exhaust ', how: 'plugged' }],
    };
    expect(steps([layUp, half])).toEqual(['Battery']);
    expect(ask([layUp]).matters.wakeSteps[0]).toMatchObject({ layUp: 'e0', keysAt: 'hook 3' });
  });
});

describe('carStatus()', () => {
  const hand = (on: string, what: 'bought' | 'sold' | 'lent' | 'returned'): Line => ({
    kind: 'handover',
    on,
    what,
  });
  test('carStatus() follows the last handover and what its people say', () => {
    expect(ask([]).status).toBe('inUse');
    expect(ask([hand('2026-05-01', 'lent')]).status).toBe('away');
    expect(ask([hand('2026-05-02', 'returned'), hand('2026-05-01', 'lent')]).status).toBe('inUse');
    expect(ask([hand('2026-05-01', 'sold')]).status).toBe('sold');
    expect(ask([], { status: 'inPieces' }).status).toBe('inPieces');
  });
});

describe('overrule()', () => {
  test('overrule() makes an item due after what it names, until it is done later', () => {
    const done = (time: string): Line => ({
      kind: 'service',
      on: '2026-06-10',
      time,
      items: ['fluid'],
    });
    expect(item([], 'fluid')).toEqual(['fine', null, undefined]);
    expect(item([soft], 'fluid')).toEqual(['overdue', 'trigger', 'e0']);
    expect(item([soft, done('18:00')], 'fluid')).toEqual(['fine', null, undefined]);
    expect(item([soft, done('09:00')], 'fluid')).toEqual(['overdue', 'trigger', 'e0']);
    expect(item([{ ...soft, removed: true }], 'fluid')).toEqual(['fine', null, undefined]);
    expect(item([{ ...soft, what: 'off' } as Line], 'fluid')).toEqual(['fine', null, undefined]);
  });

  test('overrule() takes oil hotter than its limit, even with nothing else on record', () => {
    const hot = (text: string): Line => ({
      kind: 'session',
      use: 'circuit',
      on: '2026-06-10',
      oilTempPeak: { text, unit: 'c' },
    });
    expect(item([hot('130')], 'oil')).toEqual(['unknown', 'noBaseline', undefined]);
    expect(item([hot('131')], 'oil')).toEqual(['overdue', 'trigger', 'e0']);
  });

  test('overrule() asks for the torque of wheels that were off', () => {
    const off: Line = { kind: 'wheels', on: '2026-06-10', change: 'off', which: ['frontLeft'] };
    expect(item([off], 'fasteners')).toEqual(['overdue', 'trigger', 'e0']);
    const on: Line = { kind: 'wheels', on: '2026-06-11', change: 'torqued' };
    expect(item([off, on], 'fasteners')).toEqual(['fine', null, undefined]);
  });

  test('overrule() ends a one-off when it is done, not at its starting point', () => {
    expect(item([], 'look')[0]).toBe('overdue');
    const done: Line = { kind: 'service', on: '2026-05-20', items: ['look'] };
    expect(item([done], 'look')).toEqual(['fine', 'doneOnce', undefined]);
  });

  test('overrule() treats an item as due since its day, until it is done', () => {
    expect(item([], 'cabin')).toEqual(['overdue', 'asked', undefined]);
    const done = (on: string): Line => ({ kind: 'service', on, items: ['cabin'] });
    expect(item([done('2026-05-31')], 'cabin')[1]).toBe('asked');
    expect(item([done('2026-06-01')], 'cabin')).toEqual(['fine', null, undefined]);
  });
});
