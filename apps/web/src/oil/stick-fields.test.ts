import { entryInput } from '@quartermark/engine/log';
import { learnSpan } from '@quartermark/engine/oil';
import { describe, expect, it, test } from 'vitest';
import { bottleEntry, emptyStick, readStick, type StickFields } from './stick-fields.ts';

const filled: StickFields = {
  marks: '20',
  before: '4',
  beforeAgain: '4,5',
  poured: { text: '500', unit: 'ml' },
  after: '14',
  afterAgain: '',
};
const problemsOf = (more: Partial<StickFields>) => readStick({ ...filled, ...more }).problems;

describe('readStick()', () => {
  it('turns mm on the stick into the way between the marks', () => {
    const { around, problems, over } = readStick(filled);
    expect(problems).toEqual({});
    expect(around).toMatchObject({ before: [0.2, 0.225], after: [0.7], pouredL: 0.5 });
    expect(over).toBe(false);
    expect(around && learnSpan(around)?.likelyL).toBeCloseTo(0.5 / 0.4875, 9);
  });

  it('is silent about what is not filled in yet', () => {
    expect(readStick(emptyStick('l'))).toEqual({ problems: {}, around: null, over: false });
    expect(readStick({ ...filled, after: '' })).toMatchObject({ problems: {}, around: null });
  });

  it('says beside the field what is wrong and how to mend it', () => {
    expect(problemsOf({ marks: 'two' }).marks).toContain('"two" is not a number');
    expect(problemsOf({ marks: '2000' }).marks).toContain('outside 3 to 200; measure from');
    expect(problemsOf({ after: '90' }).after).toContain('too far outside the marks');
    expect(problemsOf({ poured: { text: '50', unit: 'l' } }).poured).toContain('0.05 to 5 litres');
    expect(problemsOf({ after: '3' }).after).toContain('did not rise');
    expect(readStick({ ...filled, after: '3' }).around).toBeNull();
  });

  it('tells a level over MAX at once', () => {
    expect(readStick({ ...filled, after: '21' }).over).toBe(true);
  });
});

test('bottleEntry() is an entry the log takes, with what was poured as typed', () => {
  const { around } = readStick(filled);
  if (!around) throw new Error('the fields are whole');
  const entry = bottleEntry(around, {
    id: '01900000-0000-7000-8000-000000000001',
    car: '01900000-0000-7000-8000-000000000002',
    garage: { today: '2026-06-15', zone: 'Europe/London' },
    dipstick: { state: 'hotStopped', minutesAfterStop: 5 },
  });
  expect(entryInput.parse(entry)).toMatchObject({
    kind: 'oilTopUp',
    volume: { text: '500', unit: 'ml' },
    levelBefore: { how: 'fraction', fraction: 0.21 },
    levelAfter: { how: 'fraction', fraction: 0.7 },
    condition: { state: 'hotStopped', minutesAfterStop: 5 },
  });
});
