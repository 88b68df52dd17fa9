import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { positionWear, type Series } from './position-wear.ts';
import type { WearBasis } from './result.ts';
import { valueAfter } from './use-left.ts';

const amount = fc.oneof(
  fc.constant(0),
  fc.double({ min: 0, max: 60, noNaN: true }),
  fc.double({ min: 0, max: 1e9, noNaN: true }),
  fc.constantFrom(1e-9, 5e-324, 1e9),
);
const depth = fc.oneof(fc.constantFrom(0, 3, 100), fc.double({ min: 0, max: 100, noNaN: true }));
const facts = fc.record({
  basis: fc.constantFrom<WearBasis>('sessions', 'km', 'launches'),
  further: amount,
  floors: fc.array(fc.record({ whose: fc.constant('owner' as const), mm: depth }), {
    maxLength: 3,
  }),
});
const series = fc
  .tuple(fc.array(fc.tuple(amount, depth), { minLength: 1, maxLength: 12 }), fc.boolean())
  .map(
    ([told, withNew]): Series => ({
      what: 'padInner',
      corner: 'frontLeft',
      groove: null,
      where: 'front left, inner',
      unit: 'mm',
      sd: 0.2,
      points: told
        .toSorted(([a], [b]) => a - b)
        .map(([use, value], at) => ({
          use,
          value,
          on: '2026-05-01',
          entry: withNew && at === 0 ? null : `e${at}`,
        })),
    }),
  );

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (value === null || typeof value !== 'object') return [];
  return Object.values(value).flatMap(numbersIn);
}

describe('positionWear() of anything', () => {
  it('gives finite numbers, bounds in order, and nothing below zero', () => {
    fc.assert(
      fc.property(series, facts, (told, { basis, further, floors }) => {
        const nowUse = (told.points.at(-1)?.use ?? 0) + further;
        const wear = positionWear(told, { basis, nowUse, floors });
        expect(numbersIn(wear).every(Number.isFinite)).toBe(true);
        for (const band of [wear.now, wear.rate, wear.line && valueAfter(wear.line, further)]) {
          if (!band) continue;
          expect(band.low).toBeGreaterThanOrEqual(0);
          expect(band.likely).toBeGreaterThanOrEqual(band.low);
          expect(band.high).toBeGreaterThanOrEqual(band.likely);
        }
        for (const { left } of wear.floors) {
          if (left === null) continue;
          expect(left.low).toBeGreaterThanOrEqual(0);
          if (left.likely !== null) expect(left.likely).toBeGreaterThanOrEqual(left.low);
          if (left.high !== null) expect(left.high).toBeGreaterThanOrEqual(left.likely ?? left.low);
        }
        // a rise and a rate exclude one another, and what is unknown has no value
        expect(wear.rate === null).toBe(wear.line === null);
        if (wear.rise !== null) expect([wear.finding, wear.now]).toEqual(['rises', null]);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('positionWear() of pads that wear unevenly', () => {
  it('holds the truth in its bounds some eight times in ten', () => {
    const random = generator(20_260_615);
    const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    let held = 0;
    let early = 0;
    const runs = 600;
    for (let run = 0; run < runs; run += 1) {
      const perSession = 0.2 + 0.3 * random();
      let truth = 12;
      let use = 0;
      const points: Series['points'] = [];
      let ofDay = 0;
      const drive = () => {
        ofDay = Math.max(0, 4 * perSession * (1 + 0.3 * normal()));
        truth -= ofDay;
        use += 4;
      };
      const days = 2 + Math.floor(4 * random());
      for (let index = 0; index < days && truth > 5; index += 1) {
        drive();
        points.push({
          use,
          value: Math.max(0, truth + 0.2 * normal()),
          on: '',
          entry: `e${index}`,
        });
      }
      const { line, floors } = positionWear(
        {
          what: 'padInner',
          corner: 'frontLeft',
          groove: null,
          where: '',
          unit: 'mm',
          sd: 0.2,
          points,
        },
        { basis: 'sessions', nowUse: use, floors: [{ whose: 'practice', mm: 3 }] },
      );
      if (line === null) continue;
      const now = use;
      while (truth > 3) drive();
      const left = floors[0]?.left;
      // inside of the day that went below
      const crossed = use - now - (4 * (3 - truth)) / ofDay;
      if (left && crossed < left.low) early += 1;
      if (left && crossed >= left.low && crossed <= (left.high ?? 1e9)) held += 1;
    }
    expect(held / runs).toBeGreaterThan(0.75);
    expect(held / runs).toBeLessThan(0.92);
    expect(early / runs).toBeLessThan(0.13);
  });
});

/** Marsaglia's xorshift of 32 bits: the same numbers everywhere. */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}
