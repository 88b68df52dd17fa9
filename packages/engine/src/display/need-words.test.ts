import { describe, expect, test } from 'vitest';
import { FIXED_NEEDS, WEIGHED_NEEDS } from '../log/requirements.ts';
import { marginWords, NEED_GROUP_WORDS, needGroup, whyNotAccepted } from './need-words.ts';

const metric = { distance: 'km', volume: 'l' } as const;

describe('marginWords()', () => {
  test.each([
    [{ value: 3.24, unit: 'mm' }, '3.2 mm left'],
    [{ value: -0.4, unit: 'mm' }, '0.4 mm short'],
    [{ value: 1200, unit: 'km' }, '1,200 km left'],
    [{ value: -1, unit: 'sessions' }, '1 session short'],
    [{ value: 2, unit: 'launches' }, '2 launches left'],
    [{ value: 1, unit: 'days' }, '1 day left'],
    [{ value: -0.35, unit: 'L' }, '0.35 L short'],
    [{ value: 2.5, unit: 'h' }, '2.5 h left'],
    [{ value: 12, unit: 'g' }, '12 g left'],
    [{ value: 3, unit: 'dB' }, '3 dB below'],
    [{ value: -2, unit: 'dB' }, '2 dB too loud'],
    [{ value: 0, unit: 'mm' }, '0 mm left'],
  ] as const)('marginWords() of %j is "%s"', (margin, words) => {
    expect(marginWords(margin, metric)).toBe(words);
  });

  test('marginWords() speaks in the units of the car and of the bottles', () => {
    const ours = { distance: 'mi', volume: 'usQt' } as const;
    expect(marginWords({ value: 160.9344, unit: 'km' }, ours)).toBe('100 mi left');
    expect(marginWords({ value: -0.946352946, unit: 'L' }, ours)).toBe('1 US qt short');
  });
});

test('needGroup() puts each kind of need into a group that has a name', () => {
  for (const kind of [...FIXED_NEEDS, ...WEIGHED_NEEDS])
    expect(NEED_GROUP_WORDS[needGroup(kind)]).toBeTruthy();
});

describe('whyNotAccepted()', () => {
  const open = { status: 'notMet', weight: 'blocking', mayAccept: false, accepted: null } as const;

  test.each([...FIXED_NEEDS, 'torque'] as const)(
    'whyNotAccepted() gives %s a reason of its own',
    (kind) => {
      expect(whyNotAccepted({ kind, ...open })).toMatch(/^Nobody can take this upon himself: /);
    },
  );

  test('whyNotAccepted() is silent where it may be, is met, or was taken on', () => {
    expect(whyNotAccepted({ kind: 'limit', ...open, mayAccept: true })).toBeNull();
    expect(whyNotAccepted({ kind: 'wheels', ...open, status: 'met' })).toBeNull();
    const accepted = { acceptanceId: 'a', by: 'Oda', on: '2026-06-15', because: 'seen' };
    expect(whyNotAccepted({ kind: 'limit', ...open, accepted })).toBeNull();
  });

  test('whyNotAccepted() says of advice that it holds nothing back', () => {
    expect(whyNotAccepted({ kind: 'limit', ...open, weight: 'advice' })).toContain('advice');
  });
});
