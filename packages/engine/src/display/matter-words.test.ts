import { describe, expect, test } from 'vitest';
import { carBook, km, type Line } from '../../test/car-book.ts';
import { analyseBook } from '../index.ts';
import type { BookDraft, ItemDraft } from '../log/index.ts';
import { carSentences } from './car-answer.ts';
import { dueAtOnceSentence } from './cause-words.ts';
import { garageAnswer } from './garage-answer.ts';
import { type GarageRow, needsAHand } from './garage-row.ts';
import { laneOf } from './lane-of.ts';
import {
  findingWords,
  incidentWords,
  SEVERITY_WORDS,
  wakeStepWords,
  wheelsWords,
} from './matter-words.ts';
import { itemUrgency, urgencyOf } from './urgency-of.ts';
import { whatChanged } from './what-changed.ts';

type More = { items?: BookDraft['items']; profile?: BookDraft['car']['profile'] };
const hose: Line = {
  kind: 'finding',
  on: '2026-06-12',
  what: 'Brake hose cracked',
  where: 'rearLeft',
  severity: 'doNotDrive',
};
const off: Line = { kind: 'incident', on: '2026-06-13', what: 'off', detail: 'turn 4' };
const wheelsOff: Line = { kind: 'wheels', on: '2026-06-14', change: 'off' };
const layUp: Line = {
  kind: 'layUp',
  on: '2026-01-01',
  lines: [
    { what: 'exhaust', how: 'plugged' },
    { what: 'battery', how: 'disconnected' },
  ],
};
const oil: ItemDraft & { id: string } = {
  id: 'oil',
  name: 'Engine oil',
  limits: [{ measure: 'months', value: 12 }],
  baseline: { on: '2025-01-01' },
};

const ask = (lines: readonly Line[], more: More = {}) => analyseBook(carBook(lines, more));
const facts = (items: readonly (ItemDraft & { id: string })[] = []) => ({
  unit: 'km' as const,
  volumeUnit: 'l' as const,
  distanceUnit: 'km' as const,
  drySump: false,
  items: items.map(({ id, name, limits }) => ({ id, item: { name, limits } })),
});
const said = (lines: readonly Line[], more: More = {}) =>
  carSentences(ask(lines, more), facts(more.items ?? [oil]));
const row = (name: string, lines: readonly Line[], more: More = {}): GarageRow => {
  const book = carBook(lines, { items: [oil], ...more });
  const analysis = analyseBook(book);
  return {
    name,
    unit: 'km',
    lane: laneOf(book, analysis, null),
    laidUp: analysis.laidUp !== null,
    asOf: analysis.asOf,
    overdue: analysis.items.filter(({ state }) => state === 'overdue').length,
    dueSoon: 0,
    notOnRecord: 0,
  };
};

describe('carSentences() of what forbids driving', () => {
  test('carSentences() begins with what forbids driving, the worst first, then the items', () => {
    const lines = [layUp, wheelsOff, off, hose];
    expect(said(lines, { items: [oil], profile: { status: 'inPieces' } })).toEqual([
      'Do not drive: Brake hose cracked, rear left, since 12 June 2026.',
      'Off the track on 13 June 2026 (turn 4), not looked over yet.',
      'Wheels were off on 14 June 2026 (all four), their torque is not on record since.',
      'Not woken up: exhaust and battery are as the lay-up left them.',
      'In pieces.',
      'Engine oil is overdue: 12 months passed on 1 January 2026.',
    ]);
  });

  test('carSentences() says where a car is that is not here, after what forbids driving it', () => {
    const lent: Line = { kind: 'handover', on: '2026-06-01', what: 'lent' };
    expect(said([lent, hose], { items: [oil] })).toEqual([
      'Do not drive: Brake hose cracked, rear left, since 12 June 2026.',
      'Away: lent, or in somebody else’s hands.',
      'Engine oil is overdue: 12 months passed on 1 January 2026.',
    ]);
    const sold: Line = { ...lent, what: 'sold' };
    expect(said([sold], { items: [oil] })).toEqual(['Sold: its book is kept.']);
  });

  test('carSentences() says lesser findings after it, and what is to be checked again', () => {
    const session: Line = { kind: 'session', on: '2026-06-14', use: 'circuit', distance: km(40) };
    const lines: Line[] = [
      { ...hose, severity: 'beforeHardUse', dueBy: '2026-07-01' } as Line,
      { ...wheelsOff, on: '2026-06-13', change: 'torqued', which: ['frontLeft'] } as Line,
      session,
    ];
    expect(said(lines).slice(0, 2)).toEqual([
      'Before hard use: Brake hose cracked, rear left, since 12 June 2026, to be done by 1 July 2026.',
      'Wheels torqued on 13 June 2026 (front left), 1 session and 40 km since: check the torque again, cold.',
    ]);
  });
});

describe('garageAnswer() of what forbids driving', () => {
  test('garageAnswer() says why, and never calls a car overdue that is gone or in pieces', () => {
    const rows = [
      row('Tern', [hose]),
      row('Wren', [], { profile: { status: 'inPieces' } }),
      row('Lark', [{ kind: 'handover', on: '2026-06-01', what: 'lent' }]),
      row('Heron', [{ kind: 'handover', on: '2026-06-01', what: 'sold' }]),
    ];
    expect(rows.filter(needsAHand).map(({ name }) => name)).toEqual(['Tern']);
    expect(garageAnswer({ cars: 4, needsAHand: 1, rows })).toBe(
      'One car needs a hand today: Tern (do not drive). In pieces: Wren. Away: Lark. Sold: Heron.',
    );
  });
});

test('urgencyOf() puts do not drive and incidents first wherever the car stands, sold cars last', () => {
  const urgency = (lines: readonly Line[], more: More = {}) =>
    urgencyOf(ask(lines, { items: [oil], ...more }));
  const lent: Line = { kind: 'handover', on: '2026-06-01', what: 'lent' };
  const order = [
    urgency([hose, off]),
    urgency([lent, hose], { items: [] }),
    urgency([off]),
    urgency([wheelsOff], { items: [] }),
    urgency([]),
    urgency([], { items: [] }),
    urgency([], { profile: { status: 'inPieces' } }),
    urgency([], { profile: { status: 'inPieces' }, items: [] }),
    urgency([{ ...lent, what: 'sold' } as Line, hose]),
  ];
  expect(order).toEqual([...order].sort((a, b) => a - b));
  expect(new Set(order).size).toBe(order.length);
});

describe('items due at once in words', () => {
  const fluid = {
    ...oil,
    id: 'fluid',
    name: 'Brake fluid',
    triggers: { incidents: ['off'] },
  } as const;
  const once = { ...oil, id: 'look', name: 'Leak look', once: true } as const;
  const asked = { ...oil, id: 'cabin', name: 'Cabin filter', dueSince: '2026-06-01' } as const;
  const items = [oil, once, asked, { ...fluid, triggers: { incidents: ['off' as const] } }];
  const done: Line = { kind: 'service', on: '2026-05-03', items: ['look'] };

  test('carSentences() says what made an item due, what was asked for, and what is over', () => {
    const sentences = said([off, done], { items });
    expect(sentences).toContain('Brake fluid is overdue: off the track on 13 June 2026.');
    expect(sentences).toContain('Cabin filter is overdue: you said to treat it as due now.');
    expect(sentences.join(' ')).not.toMatch(/Leak look/);
  });

  test('itemUrgency() puts what happened first and what is done once last', () => {
    const sorted = [...ask([off, done], { items }).items].sort(
      (a, b) => itemUrgency(a) - itemUrgency(b),
    );
    expect(sorted[0]?.id).toBe('fluid');
    expect(sorted.at(-1)?.id).toBe('look');
  });

  test('laneOf() carries what happened, and stays small', () => {
    const book = carBook([off, done], { items });
    const lane = laneOf(book, analyseBook(book), null);
    expect(lane.next[0]).toMatchObject({
      name: 'Brake fluid',
      cause: { code: 'off', on: '2026-06-13' },
    });
    expect(lane).toMatchObject({ stop: 'incident', status: 'inUse', open: 1 });
    const long = { ...book, items: book.items.map((it) => ({ ...it, name: '🛢️'.repeat(80) })) };
    const triggers = { incidents: ['lowOilPressure' as const] };
    const many = {
      ...carBook([{ ...off, what: 'lowOilPressure' } as Line], {
        items: ['x'.repeat(36), 'y'.repeat(36), 'z'.repeat(36)].map((id) => ({
          ...fluid,
          id,
          triggers,
        })),
      }),
    };
    for (const one of [long, many])
      expect(
        new TextEncoder().encode(JSON.stringify(laneOf(one, analyseBook(one), null))).length,
      ).toBeLessThanOrEqual(1024);
  });

  test('dueAtOnceSentence() says why, and nothing where the limits decide', () => {
    const sentences = ask([off, done], { items }).items.map(dueAtOnceSentence);
    expect(sentences).toEqual([
      null,
      'It was to be done once, and was on 3 May 2026. Its limits no longer count.',
      'You said: treat as due now. It stays due until it is done.',
      'Due at once: off the track on 13 June 2026. It stays due until it is done after that.',
    ]);
  });
});

test('whatChanged() says what came to stand open and what no longer does', () => {
  const answer: Line = { kind: 'answer', on: '2026-06-15', notice: 'e1', answer: 'all straight' };
  const wake: Line = {
    kind: 'wakeUp',
    on: '2026-06-15',
    lines: [{ what: 'battery', how: 'disconnected' }],
  };
  const before = ask([layUp, off]);
  const after = ask([layUp, off, answer, wake, hose, wheelsOff], {
    profile: { status: 'inPieces' },
  });
  expect(whatChanged(before, after, facts())).toEqual([
    'Do not drive: Brake hose cracked, rear left, since 12 June 2026.',
    'Looked over: off the track.',
    'Wheels were off on 14 June 2026 (all four), their torque is not on record since.',
    'Undone after the lay-up: battery.',
    'The car: in use → in pieces.',
  ]);
  expect(
    whatChanged(after, ask([layUp, off, answer, wake, { ...hose, removed: true }]), facts()),
  ).toContain('No longer open: Brake hose cracked.');
  expect(whatChanged(after, after, facts())).toEqual([]);
});

test('words for screens name things as a clipboard would', () => {
  const { matters } = ask([hose, off, wheelsOff, layUp]);
  const [finding] = matters.findings;
  const [incident] = matters.incidents;
  expect(SEVERITY_WORDS[finding?.severity ?? 'watch']).toBe('Do not drive');
  expect(finding && findingWords(finding)).toBe(
    'Brake hose cracked, rear left, since 12 June 2026',
  );
  expect(incident && incidentWords(incident)).toBe(
    'Off the track on 13 June 2026 (turn 4), not looked over yet',
  );
  expect(matters.wakeSteps.map(wakeStepWords)).toEqual([
    'Exhaust is plugged',
    'Battery was disconnected',
  ]);
  expect(wheelsWords(ask([]).matters.wheels, 'km')).toBe(null);
  const torqued = ask([{ ...wheelsOff, change: 'torqued' } as Line]).matters.wheels;
  expect(wheelsWords(torqued, 'km')).toMatch(/after the first session or 80 km$/);
  expect(wheelsWords(torqued, 'mi')).toMatch(/after the first session or 50 mi$/);
});
