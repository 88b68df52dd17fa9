import { itemInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { versionRows } from '../forms/version-rows.ts';
import { itemLines } from './item-lines.ts';

const oil = itemInput.parse({
  name: 'Engine oil',
  role: 'engineOil',
  limits: [
    { measure: 'km', value: 10_000, unit: 'km', weights: { circuit: 4 } },
    { measure: 'months', value: 12 },
  ],
  severe: {
    classes: ['circuit', 'strip'],
    share: 0.25,
    limits: [{ measure: 'km', value: 5_000, unit: 'km' }],
  },
  baseline: {
    on: '2026-05-01',
    odometer: { text: '41,000', unit: 'km' },
    historyComplete: true,
  },
});
const wordsOf = (item: typeof oil) =>
  Object.fromEntries(itemLines(item).map(({ label, words }) => [label, words]));

test('itemLines() says every part of an item in words, figures of the odometer as typed', () => {
  expect(wordsOf(oil)).toEqual({
    Name: 'Engine oil',
    'What it is': 'the engine oil',
    Limits: '10,000 km (circuits × 4), 12 months',
    'Hard use': 'circuits, drag strip, from 25 % of the usual limit in distance: 5,000 km',
    'Last done': '1 May 2026, at 41,000 km on the odometer, all use since then is in the log',
    'Done once': 'no, it comes again',
    'Due since': 'not said',
    'Due at once after': 'nothing',
    'Tell me before': '14 days',
    'Days to get the parts': '0',
    'Whose values': 'unverified',
  });
});

test('itemLines() says what makes an item due at once, and that it is done once', () => {
  const triggers = { incidents: ['overRev' as const], oilHotterThanC: 140, wheelsOff: true };
  expect(wordsOf({ ...oil, once: true, dueSince: '2026-06-01', triggers })).toMatchObject({
    'Done once': 'yes, then it is over',
    'Due since': '1 June 2026',
    'Due at once after':
      'over-rev, oil hotter than 140 °C, wheels off and not on record as torqued',
  });
});

test('itemLines() says what is not given', () => {
  const { severe: _, baseline: __, ...rest } = oil;
  expect(wordsOf(rest)).toMatchObject({
    'Hard use': 'no schedule of its own',
    'Last done': 'not on record',
  });
});

test('versionRows() sets the two beside each other by what they speak of', () => {
  const mine = itemLines({ ...oil, name: 'Oil' });
  expect(versionRows(mine, itemLines(oil))[0]).toEqual({
    label: 'Name',
    mine: 'Oil',
    newest: 'Engine oil',
  });
  expect(versionRows(mine, [])[0]?.newest).toBe('not given');
});
