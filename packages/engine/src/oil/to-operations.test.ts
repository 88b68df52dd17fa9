import { describe, expect, it } from 'vitest';
import type { OilStep, StickCondition } from './operation.ts';
import type { StickCar } from './stick.ts';
import { type OilEvent, type OilHappening, toOperations } from './to-operations.ts';

/** Litres from MAX are fractions of the span: with 2 L both can be told apart. */
const SPAN_L = 2;
const car: StickCar = { spanL: SPAN_L, capacityL: 6, drySump: false, procedure: null };
const dry: StickCar = { ...car, drySump: true };
const wet: StickCar = { ...car, procedure: { state: 'hotStopped', minutesAfterStop: 10 } };
const COLD: StickCondition = { state: 'cold' };

type Told = { at?: number; condition?: StickCondition; is: OilHappening };

function stepsOf(told: readonly Told[], of: StickCar = car): OilStep[][] {
  const events = told.map(
    ({ at = 0, condition, is }, entry): OilEvent => ({
      entry,
      totalKm: at,
      drive: { road: 0, circuit: 0, runs: 0 },
      condition: condition ?? null,
      happening: is,
    }),
  );
  return toOperations(of, events).map(({ steps }) => [...steps]);
}

const reading = (level: number | 'none', more = {}): OilHappening => ({
  is: 'reading',
  level,
  resolution: null,
  poor: false,
  ...more,
});
const topUp = (more: Partial<Extract<OilHappening, { is: 'topUp' }>> = {}): OilHappening => ({
  is: 'topUp',
  volumeL: 0.5,
  filledToMax: false,
  before: null,
  after: null,
  ...more,
});
const change: OilHappening = { is: 'change', after: null };

/** The first step of the last entry. */
const lastOf = (told: Told[], of?: StickCar) => stepsOf(told, of).at(-1) ?? [];
const near = (value: number) => expect.closeTo(value, 12);
const read = (level: number, sd: number) => ({
  does: 'observe',
  tag: 'read',
  levelL: near(level * SPAN_L),
  sdL: near(sd * SPAN_L),
});
const weak = (level: number, sd: number) => ({
  does: 'observe',
  tag: 'weak',
  levelL: near(level * SPAN_L),
  sdL: near(sd * SPAN_L),
  read: null,
});
const eighth = Math.sqrt(0.09 ** 2 + 1 / 8 ** 2 / 12);

describe('toOperations() of a reading', () => {
  it.each([
    ['between the marks', reading(0.5), -0.5, eighth],
    [
      'to a quarter',
      reading(0.5, { resolution: 0.25 }),
      -0.5,
      Math.sqrt(0.09 ** 2 + 1 / 4 ** 2 / 12),
    ],
    ['read badly', reading(0.5, { poor: true }), -0.5, Math.sqrt(0.2 ** 2 + 1 / 8 ** 2 / 12)],
    ['at MIN', reading(0), -1, 1.5 * eighth],
    [
      'below MIN, read badly',
      reading(-0.25, { poor: true }),
      -1.25,
      1.5 * Math.sqrt(0.2 ** 2 + 1 / 8 ** 2 / 12),
    ],
    ['with nothing on the stick', reading('none'), -1.1, 0.25],
  ])('observes it as such: %s', (_, is, level, sd) => {
    expect(lastOf([{ is }])).toMatchObject([read(level, sd)]);
  });

  it('counts one read too early after the stop as read badly', () => {
    const condition: StickCondition = { state: 'hotStopped', minutesAfterStop: 3 };
    expect(lastOf([{ is: reading(0.5), condition }], wet)).toMatchObject([
      read(-0.5, Math.sqrt(0.2 ** 2 + 1 / 8 ** 2 / 12)),
    ]);
  });

  it.each([
    ['as such', reading(0.5), 0.3],
    ['read badly, too', reading(0.5, { poor: true }), 1.5 * 0.3],
  ])('corrects one read cold instead of hot, and trusts it less: %s', (_, is, sd) => {
    const [step] = lastOf([{ is, condition: COLD }], wet);
    const resolution = 1 / 8 / Math.sqrt(12);
    const wanted = (sd / 0.3) * Math.hypot(0.3, resolution);
    expect(step).toMatchObject(read(-0.5 + (0.0007 * 6 * 70) / SPAN_L, wanted));
  });

  it('corrects "nothing on the stick", and trusts it no more than otherwise', () => {
    const [step] = lastOf([{ is: reading('none', { resolution: 0.001 }), condition: COLD }], wet);
    expect(step).toMatchObject(
      read(-1.1 + (0.0007 * 6 * 70) / SPAN_L, Math.hypot(0.3, 0.001 / Math.sqrt(12))),
    );
  });
});

describe('toOperations() of levels that cannot be compared', () => {
  const off = { does: 'observe', tag: 'off', sdL: near(0.35 * SPAN_L) };
  const cold = (is: OilHappening): Told => ({ is, condition: COLD });

  it('observes only the first, and lists those that follow', () => {
    const [first, second] = stepsOf([cold(reading(0.5)), cold(reading(0.4))], dry);
    expect(first).toMatchObject([
      { ...off, levelL: near(-0.5 * SPAN_L), read: { offProcedure: true } },
    ]);
    expect(second).toMatchObject([{ does: 'list', read: { level: 0.4, offProcedure: true } }]);
  });

  it.each<[string, Told, boolean]>([
    ['a level by procedure', { is: reading(0.5) }, true],
    ['an oil change', { is: change }, true],
    ['a filling to MAX', { is: topUp({ filledToMax: true }) }, true],
    ['a filling to MAX read cold', cold(topUp({ filledToMax: true })), false],
    ['a top-up', { is: topUp() }, false],
    ['a repair', { is: { is: 'repair' } }, false],
  ])('observes one again after %s: %s', (_, between, again) => {
    const last = lastOf([cold(reading(0.5)), between, cold(reading(0.4))], dry);
    expect(last).toMatchObject([again ? off : { does: 'list' }]);
  });

  it.each([
    ['read cold on a dry sump', dry, COLD, 0.35],
    ['read cold instead of hot', wet, COLD, 0.3],
    ['read too early', wet, { state: 'hotStopped', minutesAfterStop: 3 } as const, 0.2],
    ['by procedure', wet, null, 0.1],
  ])('trusts "filled to MAX" by how it was read: %s', (_, of, condition, sd) => {
    const steps = lastOf(
      [{ is: topUp({ filledToMax: true }), ...(condition && { condition }) }],
      of,
    );
    expect(steps.at(-1)).toMatchObject({ does: 'observe', tag: 'full', sdL: near(sd * SPAN_L) });
  });
});

describe('toOperations() of a top-up', () => {
  const poured = { does: 'add', volumeL: 0.5, sdL: near(0.015) };

  it('takes it that somebody saw the level low, where nothing else says so', () => {
    expect(lastOf([{ is: topUp() }])).toMatchObject([weak(-0.7, 0.3), poured]);
  });

  it('takes it that nobody pours past MAX', () => {
    expect(lastOf([{ is: topUp({ volumeL: 1.8 }) }])).toMatchObject([
      weak(-0.9, 0.3),
      { does: 'add', volumeL: 1.8 },
    ]);
  });

  it.each<[string, Told, number, boolean]>([
    ['a reading at the same stop', { is: reading(0.3) }, 0, false],
    ['a reading 20 km before', { is: reading(0.3) }, 20, false],
    ['a reading 21 km before', { is: reading(0.3) }, 21, true],
    ['another bottle at the same stop', { is: topUp() }, 0, false],
    ['an oil change 5 km before', { is: change }, 5, false],
    ['a repair at the same stop', { is: { is: 'repair' } }, 0, true],
    ['a use at the same stop', { is: { is: 'use' } }, 0, true],
  ])('knows the level from %s', (_, before, at, guesses) => {
    const steps = lastOf([{ is: reading(0.9), at: -900 }, before, { is: topUp(), at }]);
    expect(steps[0]).toMatchObject(guesses ? weak(-0.7, 0.3) : poured);
  });

  it('does not know it from a level that cannot be compared, before or at the top-up itself', () => {
    const cold = { is: reading(0.3), condition: COLD };
    expect(lastOf([cold, { is: topUp() }], dry)[0]).toMatchObject(weak(-0.7, 0.3));
    const both = lastOf([{ is: topUp({ before: 0.3 }), condition: COLD }], dry);
    expect(both).toMatchObject([{ tag: 'off' }, weak(-0.7, 0.3), poured]);
  });

  it('observes the level before, pours, is filled, and observes the level after, in this order', () => {
    const all = topUp({ before: 0.2, after: 1, filledToMax: true });
    expect(lastOf([{ is: all }])).toMatchObject([
      read(-0.8, eighth),
      poured,
      {
        does: 'observe',
        tag: 'full',
        levelL: near(-0.02 * SPAN_L),
        sdL: near(0.1 * SPAN_L),
        read: null,
      },
      read(0, eighth),
    ]);
  });

  it('sets the level where it was filled by nobody knows how much', () => {
    expect(
      lastOf([{ is: topUp({ volumeL: null, filledToMax: true, before: 0.2, after: 1 }) }]),
    ).toMatchObject([
      read(-0.8, eighth),
      { does: 'reset', levelL: near(-0.02 * SPAN_L), sdL: near(0.1 * SPAN_L), change: false },
      read(0, eighth),
    ]);
  });

  it('pours half a span, more or less, where nobody knows how much', () => {
    expect(lastOf([{ is: topUp({ volumeL: null, before: 0.2 }) }])).toMatchObject([
      read(-0.8, eighth),
      { does: 'add', volumeL: 0.5 * SPAN_L, sdL: 0.35 * SPAN_L },
    ]);
  });

  it('knows a small volume to a hundredth of a litre', () => {
    expect(lastOf([{ is: topUp({ volumeL: 0.1 }) }])[1]).toMatchObject({ volumeL: 0.1, sdL: 0.01 });
  });
});

describe('toOperations() of an oil change', () => {
  const set = {
    does: 'reset',
    levelL: near(-0.05 * SPAN_L),
    sdL: near(0.12 * SPAN_L),
    change: true,
  };

  it('sets the level, and observes the one read after it', () => {
    expect(lastOf([{ is: { is: 'change', after: 1 } }])).toMatchObject([set, read(0, eighth)]);
  });

  it.each([
    [300, false],
    [301, true],
  ])('takes it that the level was kept between the marks: %d km after a reading %s', (at, kept) => {
    const steps = lastOf([{ is: reading(0.5) }, { is: change, at }]);
    expect(steps).toMatchObject(kept ? [weak(-0.5, 0.4), set] : [set]);
  });

  it('takes it so only where the log has something before', () => {
    expect(lastOf([{ is: change, at: 5000 }])).toMatchObject([set]);
    expect(lastOf([{ is: { is: 'use' } }, { is: change }])).toMatchObject([weak(-0.5, 0.4), set]);
  });
});

describe('toOperations() of the rest', () => {
  it('hands on a repair, and nothing for a use', () => {
    expect(stepsOf([{ is: { is: 'repair' } }, { is: { is: 'use' } }])).toEqual([
      [{ does: 'repair' }],
      [],
    ]);
  });
});
