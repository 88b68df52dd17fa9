import { expect, test } from 'vitest';
import { ENTRY_KINDS, entryInput } from './entry.ts';

const zone = 'America/Denver';
const common = { id: 'e1', on: '2026-05-02', zone };

function problems(input: unknown): string[] {
  const parsed = entryInput.safeParse(input);
  return parsed.success ? [] : parsed.error.issues.map((i) => `${i.path.join('.')}: ${i.message}`);
}

test('entryInput() knows every kind of the log', () => {
  expect(ENTRY_KINDS).toHaveLength(24);
});

test.each([
  [
    'a negative volume',
    { kind: 'oilTopUp', volume: { text: '-1', unit: 'l' } },
    /oil volume: -1 is outside/,
  ],
  [
    'a volume beyond what is poured',
    { kind: 'oilTopUp', volume: { text: '150', unit: 'usQt' } },
    /150 usQt is outside 0.01 to 15 litres/,
  ],
  [
    'poured words',
    { kind: 'oilTopUp', volume: { text: 'half a litre', unit: 'l' } },
    /"half a litre" is not a number/,
  ],
  ['a drop too little', { kind: 'oilTopUp', volume: { text: '5', unit: 'ml' } }, /5 ml is outside/],
  [
    'an absurd level',
    { kind: 'oilCheck', level: { how: 'fraction', fraction: 7.5 } },
    /level.fraction: level: above 1.6/,
  ],
  [
    'an unknown unit',
    { kind: 'odometer', odometer: { text: '5', unit: 'furlong' } },
    /odometer: the unit must be one of km, mi/,
  ],
  [
    'words for a number',
    { kind: 'odometer', odometer: { text: 'about 5', unit: 'km' } },
    /odometer: "about 5" is not a number/,
  ],
  [
    'a day that does not exist',
    { kind: 'note', note: 'x', on: '2026-02-30' },
    /2026-02-30 does not exist/,
  ],
  ['a note over 64 KB', { kind: 'note', note: 'é'.repeat(33_000) }, /longer than 64 KB/],
  [
    'a trip that ends before it begins',
    { kind: 'drive', use: 'touring', until: '2026-05-01' },
    /until: the last day is before the first/,
  ],
  [
    'hours for an odometer',
    { kind: 'meterReplaced', meter: 'odometer', newFirst: { text: '5', unit: 'h' } },
    /newFirst.unit: newFirst: the unit must be km or mi/,
  ],
  [
    'no session count',
    { kind: 'session', use: 'circuit', sessions: -1 },
    /sessions: must not be negative/,
  ],
])('entryInput() refuses %s and says how to mend it', (_, input, message) => {
  const found = problems({ ...common, ...input });
  expect(found.length).toBeGreaterThan(0);
  expect(found.join('\n')).toMatch(message);
});

test('entryInput() keeps numbers as they were typed', () => {
  const typed = { kind: 'oilTopUp', ...common, volume: { text: ' 0,50 ', unit: 'l' } };
  expect(entryInput.parse(typed)).toEqual(typed);
});

test('entryInput() assumes one session where none is given', () => {
  expect(entryInput.parse({ kind: 'session', use: 'circuit', ...common })).toMatchObject({
    sessions: 1,
  });
});
