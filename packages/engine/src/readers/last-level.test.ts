import { expect, test } from 'vitest';
import { book } from '../log/book.ts';
import { lastLevel } from './last-level.ts';

const zone = 'Europe/Lisbon';

function levelOf(drafts: object[], profile: object = {}) {
  const entries = drafts.map((draft, index) => ({
    id: `e${index}`,
    on: '2026-05-02',
    zone,
    recorded: index,
    ...draft,
  }));
  return lastLevel(
    book.parse({
      format: 'log/1',
      asOf: '2026-06-01',
      garage: { zone },
      car: { id: 'c', unit: 'km', profile },
      items: [],
      layUps: [],
      planned: [],
      entries,
    }),
  );
}

const check = (level: object, more = {}) => ({ kind: 'oilCheck', level, ...more });
const half = { how: 'fraction', fraction: 0.5 };
const litre = { text: '1', unit: 'l' };

test('lastLevel() is not known without a reading', () => {
  expect(levelOf([{ kind: 'oilTopUp', volume: litre }])).toEqual({ lastLevel: null, flags: [] });
});

test('lastLevel() takes the latest reading by the order of the log', () => {
  const drafts = [check({ how: 'over' }, { on: '2026-05-09' }), check(half)];
  expect(levelOf(drafts).lastLevel).toEqual({
    entry: 'e0',
    on: '2026-05-09',
    fraction: null,
    mark: 'over',
    offProcedure: false,
    addedSinceL: 0,
    changedSince: false,
  });
});

test('lastLevel() adds up what was poured in since, in litres', () => {
  const quart = { text: '1', unit: 'usQt' };
  const drafts = [
    { kind: 'oilTopUp', volume: litre },
    check(half),
    { kind: 'oilTopUp', volume: litre },
    { kind: 'oilTopUp', volume: quart },
    { kind: 'oilTopUp', toMax: true },
  ];
  expect(levelOf(drafts).lastLevel?.addedSinceL).toBeCloseTo(1.946352946, 12);
});

test('lastLevel() counts a top-up after its own level before, not after its level after', () => {
  const before = { kind: 'oilTopUp', volume: litre, levelBefore: { how: 'none' } };
  expect(levelOf([before]).lastLevel).toMatchObject({ mark: 'none', addedSinceL: 1 });
  expect(levelOf([{ ...before, levelAfter: half }]).lastLevel).toMatchObject({
    fraction: 0.5,
    addedSinceL: 0,
  });
});

test('lastLevel() says that an oil change made the reading old, unless it was read after', () => {
  const change = { kind: 'oilChange', filterRenewed: true };
  expect(levelOf([check(half), change]).lastLevel).toMatchObject({
    entry: 'e0',
    changedSince: true,
  });
  expect(levelOf([check(half), { ...change, levelAfter: half }]).lastLevel).toMatchObject({
    entry: 'e1',
    changedSince: false,
  });
});

test('lastLevel() places litres from MAX on the span', () => {
  const low = check({ how: 'fromMax', litres: -0.75 });
  expect(levelOf([low], { oilSpanL: 1.5 }).lastLevel?.fraction).toBe(0.5);
});

test('lastLevel() sets litres from MAX aside with a flag where they have no place', () => {
  const drafts = [check(half), check({ how: 'fromMax', litres: -3 })];
  const flags = [{ code: 'valueIgnored', entry: 'e1', on: '2026-05-02', value: '-3 l from MAX' }];
  expect(levelOf(drafts)).toMatchObject({ lastLevel: { entry: 'e0' }, flags });
  expect(levelOf(drafts, { oilSpanL: 1 })).toMatchObject({ lastLevel: { entry: 'e0' }, flags });
});

test('lastLevel() passes over tombstones and what is dated after asOf', () => {
  const drafts = [
    check(half),
    check({ how: 'over' }, { removed: true, revision: 2 }),
    check({ how: 'none' }, { on: '2026-06-02' }),
  ];
  expect(levelOf(drafts).lastLevel?.entry).toBe('e0');
});

test('lastLevel() says when a dry sump was read cold', () => {
  const cold = check(half, { condition: { state: 'cold' } });
  expect(levelOf([cold], { sump: 'dry' }).lastLevel?.offProcedure).toBe(true);
  expect(levelOf([cold]).lastLevel?.offProcedure).toBe(false);
});
