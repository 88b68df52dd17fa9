import { analyseGear } from '../src/gear/index.ts';
import type { Book, BookDraft } from '../src/log/book.ts';
import { type EventDraft, eventInput } from '../src/log/event.ts';
import { type GearDraft, gear } from '../src/log/gear.ts';
import type { ItemDraft } from '../src/log/index.ts';
import { item } from '../src/log/item.ts';
import type { CarAsked, EventAsked, Piece } from '../src/readiness/index.ts';
import { carBook, km, type Line } from './car-book.ts';

const good = { on: '2026-06-01' } as const;
const mm = (text: string) => ({ text, unit: 'mm' as const });

/** Items with plenty left on 15 June 2026. */
export const ITEMS: (ItemDraft & { id: string })[] = [
  {
    id: 'oil',
    name: 'Engine oil',
    role: 'engineOil',
    limits: [
      { measure: 'sessions', value: 25, weights: { road: 0 } },
      { measure: 'months', value: 12 },
    ],
    leadDays: 3,
  },
  {
    id: 'fluid',
    name: 'Brake fluid, flush',
    role: 'brakeFluid',
    limits: [{ measure: 'months', value: 12 }],
  },
];

/** A log with nothing missing: read, looked at, serviced, torqued twice, looked over. */
export const LINES: Line[] = [
  { kind: 'odometer', on: '2026-01-10', odometer: km(40_000) },
  { kind: 'oilCheck', on: '2026-01-10', level: { how: 'fraction', fraction: 1 } },
  { id: 'served', kind: 'service', ...good, items: ['oil', 'fluid'], historyComplete: true },
  {
    id: 'pads-on',
    kind: 'fit',
    ...good,
    component: 'pads',
    change: 'on',
    positions: ['front'],
    condition: 'new',
    bedding: 'bedded',
  },
  { id: 'tyres-on', kind: 'fit', ...good, component: 'tyres', change: 'on', condition: 'new' },
  {
    id: 'measured',
    kind: 'measure',
    on: '2026-06-02',
    component: 'pads',
    pads: [{ corner: 'frontLeft', inner: mm('11'), outer: mm('11') }],
  },
  {
    id: 'tread',
    kind: 'measure',
    on: '2026-06-02',
    component: 'tyres',
    tread: [{ corner: 'frontLeft', depth: mm('6') }],
  },
  {
    id: 'one',
    kind: 'session',
    on: '2026-06-05',
    use: 'circuit',
    sessions: 4,
    odometer: km(41_000),
  },
  {
    id: 'measured-2',
    kind: 'measure',
    on: '2026-06-06',
    component: 'pads',
    pads: [{ corner: 'frontLeft', inner: mm('10'), outer: mm('10') }],
  },
  {
    id: 'tread-2',
    kind: 'measure',
    on: '2026-06-06',
    component: 'tyres',
    tread: [{ corner: 'frontLeft', depth: mm('5.8') }],
  },
  { id: 'torqued', kind: 'wheels', on: '2026-06-07', change: 'torqued' },
  { id: 'rechecked', kind: 'wheels', on: '2026-06-08', change: 'rechecked' },
  {
    id: 'shown',
    kind: 'inspection',
    on: '2026-06-09',
    purpose: 'Before the season',
    result: 'passed',
  },
  {
    id: 'look',
    kind: 'oilCheck',
    on: '2026-06-14',
    odometer: km(41_200),
    level: { how: 'fraction', fraction: 0.75 },
  },
];

const PARTS: Record<string, GearDraft> = {
  pads: {
    kind: 'component',
    name: 'Front pads',
    sort: 'pads',
    condition: 'new',
    newDepth: mm('11'),
  },
  tyres: {
    kind: 'component',
    name: 'Circuit tyres',
    sort: 'tyreSet',
    condition: 'new',
    dateCode: '0326',
    roadLaw: 'eu',
  },
};

/** Somebody whose helmet is valid for years. */
export const DRIVER = pieceOf(
  'driver',
  { kind: 'person', name: 'Jenna Holt-Brae' },
  [{ id: 'helmet', name: 'Helmet', limits: [{ measure: 'date', value: '2029-12-31' }] }],
  [],
);

/** A component, tool or person with what is known of it from the books given. */
export function pieceOf(
  id: string,
  body: GearDraft,
  items: readonly (ItemDraft & { id: string })[],
  books: readonly Book[],
): Piece {
  const read = gear.parse({ id, gear: body });
  const own = items.map((one) => item.parse(one));
  const entries = books.flatMap((book) =>
    book.entries.filter(
      (entry) => entry.gear === id || ('component' in entry && entry.component === id),
    ),
  );
  return {
    gear: read,
    items: own,
    orders: [],
    result: analyseGear({
      gear: read,
      asOf: '2026-06-15',
      zone: 'Europe/London',
      items: own,
      cars: books,
      entries,
    }),
  };
}

type Changes = Omit<Partial<CarAsked>, 'book'> & {
  /** entries after those of `LINES`; one with an id of theirs takes its place */
  lines?: readonly Line[];
  /** ids of entries that are left out */
  without?: readonly string[];
  items?: BookDraft['items'];
  layUps?: BookDraft['layUps'];
  profile?: BookDraft['car']['profile'];
};

/** A car of which nothing is missing on 15 June 2026, but for the changes. */
export function readyCar(changes: Changes = {}): CarAsked {
  const { lines = [], without = [], items = ITEMS, layUps = [], profile, ...rest } = changes;
  const replaced = new Set([...without, ...lines.flatMap(({ id }) => id ?? [])]);
  const kept = LINES.filter(({ id }) => id === undefined || !replaced.has(id));
  const book = carBook([...kept, ...lines], {
    items,
    layUps,
    profile: { oilSpanL: 1.5, noiseDb: 92, ...profile },
  });
  return {
    book,
    parts: Object.entries(PARTS).map(([id, body]) => pieceOf(id, body, [], [book])),
    drivers: [DRIVER],
    past: [],
    acceptances: [],
    saidIn: { distance: 'km', volume: 'l' },
    ...rest,
  };
}

/** A circuit day on Saturday 20 June 2026, 80 km away, four sessions. */
export function circuitDay(changes: Partial<EventDraft> = {}): NonNullable<EventAsked> {
  const event = eventInput.parse({
    name: 'Circuit day',
    sort: 'circuit',
    start: '2026-06-20',
    cars: ['car'],
    use: { sessions: 4 },
    travel: { distance: { text: '80', unit: 'km' } },
    ...changes,
  });
  return { id: 'day', event };
}
