import { describe, expect, it } from 'vitest';
import type { StickCondition } from './operation.ts';
import { judgeStick, type StickCar } from './stick.ts';

const wet: StickCar = {
  spanL: 1,
  capacityL: 6,
  drySump: false,
  procedure: { state: 'hotStopped', minutesAfterStop: 10 },
};
const cold: StickCar = { ...wet, procedure: { state: 'cold' } };
const dry: StickCar = { ...wet, drySump: true, procedure: null };
const on = { is: 'on', correctionL: 0 };
const off = { is: 'off', correctionL: 0 };

describe('judgeStick()', () => {
  it('compares where nothing is known of the reading or of the procedure', () => {
    expect(judgeStick(wet, null)).toEqual(on);
    expect(judgeStick({ ...wet, procedure: null }, { state: 'cold' })).toEqual(on);
  });

  it('takes a dry sump without a procedure to be read hot and idling', () => {
    expect(judgeStick(dry, { state: 'hotIdle' })).toEqual(on);
    expect(judgeStick(dry, { state: 'cold' })).toEqual(off);
    expect(judgeStick(dry, null)).toEqual(on);
  });

  it.each<[number | undefined, string]>([
    [4, 'poor'],
    [5, 'on'],
    [60, 'on'],
    [undefined, 'on'],
  ])('calls a reading %d minutes after the stop %s, of a procedure of ten', (minutes, is) => {
    expect(judgeStick(wet, { state: 'hotStopped', minutesAfterStop: minutes }).is).toBe(is);
  });

  it('counts more than an hour after the stop as cold, in the procedure too', () => {
    const late: StickCondition = { state: 'hotStopped', minutesAfterStop: 61 };
    expect(judgeStick(cold, late)).toEqual(on);
    expect(judgeStick(wet, late).is).toBe('corrected');
    expect(judgeStick({ ...wet, procedure: late }, { state: 'cold' })).toEqual(on);
  });

  it('corrects a wet sump read cold instead of hot upwards, and the reverse downwards', () => {
    const up = judgeStick(wet, { state: 'cold' });
    const down = judgeStick(cold, { state: 'hotStopped', minutesAfterStop: 10 });
    expect(up).toEqual({ is: 'corrected', correctionL: expect.closeTo(0.0007 * 6 * 70, 12) });
    expect(down).toEqual({ is: 'corrected', correctionL: expect.closeTo(-0.0007 * 6 * 70, 12) });
  });

  it('takes the temperature that was read, where one was', () => {
    const { correctionL } = judgeStick(wet, { state: 'cold', oilTempC: 30 });
    expect(correctionL).toBeCloseTo(0.0007 * 6 * 60, 12);
  });

  it.each<[string, StickCar, StickCondition]>([
    ['a dry sump', { ...dry, procedure: { state: 'hotStopped' } }, { state: 'cold' }],
    ['a running engine', wet, { state: 'hotIdle' }],
    [
      'a procedure with the engine running',
      { ...wet, procedure: { state: 'hotIdle' } },
      { state: 'cold' },
    ],
    ['an engine of unknown capacity', { ...wet, capacityL: null }, { state: 'cold' }],
  ])('does not compare %s', (_, car, condition) => {
    expect(judgeStick(car, condition)).toEqual(off);
  });
});

const plain: StickCar = {
  spanL: 1,
  capacityL: 6.5,
  drySump: false,
  procedure: { state: 'hotStopped' },
};

it('judgeStick() takes a reading for granted where nothing says otherwise', () => {
  expect(judgeStick({ ...plain, procedure: null }, { state: 'cold' }).is).toBe('on');
  expect(judgeStick(plain, null).is).toBe('on');
  expect(judgeStick(plain, { state: 'hotStopped' }).is).toBe('on');
});

it('judgeStick() holds an engine for cold more than 60 minutes after it stopped', () => {
  const other = { ...plain, procedure: { state: 'cold' as const } };
  expect(judgeStick(other, { state: 'hotStopped', minutesAfterStop: 61 }).is).toBe('on');
  expect(judgeStick(other, { state: 'hotStopped', minutesAfterStop: 60 }).is).toBe('corrected');
});

it('judgeStick() cannot compare across a running engine, a dry sump or an unknown capacity', () => {
  expect(judgeStick(plain, { state: 'cold' }).is).toBe('corrected');
  expect(judgeStick(plain, { state: 'hotIdle' }).is).toBe('off');
  expect(judgeStick({ ...plain, drySump: true }, { state: 'cold' }).is).toBe('off');
  expect(judgeStick({ ...plain, capacityL: null }, { state: 'cold' }).is).toBe('off');
});
