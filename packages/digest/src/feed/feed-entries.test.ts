import { describe, expect, it } from 'vitest';
import { carOf, lineOf, oilOf } from '../../test/lines.ts';
import { type FeedCar, feedEntries } from './feed-entries.ts';
import type { FeedEntry } from './feed-entry.ts';

const EVENT = { id: 'e1', name: 'Track day', start: '2026-06-20', end: '2026-06-21', cars: ['c1'] };
const feedCar = (of: Parameters<typeof carOf>[0], layUps: FeedCar['layUps'] = []): FeedCar => ({
  ...carOf(of),
  layUps,
});

function entriesOf(
  cars: FeedCar[],
  of: { events?: (typeof EVENT)[]; see?: string[] | 'all' } = {},
): FeedEntry[] {
  const { events = [], see = 'all' } = of;
  return feedEntries(
    { garage: 'g1', cars, events, member: { cars: see } },
    ({ to }) => `https://garage.example/${to}`,
  );
}
const short = (entries: FeedEntry[]) =>
  entries.map(({ uid, start, end, summary }) => [uid, start, end, summary]);
const bare = { oil: null };

describe('feedEntries()', () => {
  it('has what falls due, looks, events and lay-ups, each on its days', () => {
    const car = feedCar(
      { known: { lines: [lineOf({ day: '2026-07-10' })], oil: oilOf('2026-06-12', '2026-06-19') } },
      [{ id: 'l1', since: '2026-11-01', until: '2027-03-31' }],
    );
    const entries = entriesOf([car], { events: [EVENT] });
    expect(short(entries)).toEqual([
      [
        'due.c1.fluid@g1.quartermark',
        '2026-07-10',
        '2026-07-10',
        'Likely due: Brake fluid, Brindle',
      ],
      ['event.e1@g1.quartermark', '2026-06-20', '2026-06-21', 'Track day'],
      ['layup.c1.l1@g1.quartermark', '2026-11-01', '2027-03-31', 'Laid up: Brindle'],
      ['look.c1@g1.quartermark', '2026-06-19', '2026-06-19', 'Look at the oil: Brindle'],
    ]);
    expect(entries[0]).toMatchObject({
      url: 'https://garage.example/serviceForm',
      category: 'Due',
      description: '24 months are up on 10 July 2026',
    });
  });

  it('keeps what is overdue on its day, under the same UID', () => {
    const entries = entriesOf([
      feedCar({
        known: { ...bare, lines: [lineOf({ state: 'overdue', overdueSince: '2026-06-10' })] },
      }),
    ]);
    expect(short(entries)).toEqual([
      ['due.c1.fluid@g1.quartermark', '2026-06-10', '2026-06-10', 'Overdue: Brake fluid, Brindle'],
    ]);
  });

  it.each([
    ['not on record', lineOf({ state: 'unknown' })],
    ['beyond three years', lineOf({ dates: { early: null, likely: null, late: null } })],
    ['done once for all', lineOf({ reasonCode: 'doneOnce' })],
  ])('has no day for what is %s', (_name, line) => {
    expect(entriesOf([feedCar({ known: { ...bare, lines: [line] } })])).toEqual([]);
  });

  it('has of a laid-up car papers and battery, and no look; of a sold one nothing', () => {
    const lines = [lineOf(), lineOf({ id: 'paper', name: 'Insurance', binding: 'date' })];
    const of = (status: 'laidUp' | 'sold') =>
      entriesOf([
        feedCar({ known: { lane: { status }, lines, oil: oilOf('2026-06-12', '2026-06-19') } }),
      ]).map(({ uid }) => uid);
    expect(of('laidUp')).toEqual(['due.c1.paper@g1.quartermark']);
    expect(of('sold')).toEqual([]);
  });

  it('has nothing of a car that its reader may not see, nor an event of such cars alone', () => {
    const cars = ['c1', 'c2'].map((id) =>
      feedCar({ id, known: { ...bare, lines: [lineOf()] } }, [
        { id: 'l1', since: '2026-11-01', until: null },
      ]),
    );
    const forAll = { ...EVENT, id: 'e2', cars: [] };
    const uids = entriesOf(cars, { see: ['c2'], events: [EVENT, forAll] }).map(({ uid }) => uid);
    expect(uids).toEqual([
      'due.c2.fluid@g1.quartermark',
      'event.e2@g1.quartermark',
      'layup.c2.l1@g1.quartermark',
    ]);
  });

  it('has a lay-up without an end on its first day', () => {
    const car = feedCar({ known: bare }, [{ id: 'l1', since: '2026-11-01', until: null }]);
    expect(short(entriesOf([car]))).toEqual([
      ['layup.c1.l1@g1.quartermark', '2026-11-01', '2026-11-01', 'Laid up from today on: Brindle'],
    ]);
  });
});
