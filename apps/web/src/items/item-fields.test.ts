import { type ItemInput, itemInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { emptyItem, type ItemFields, itemFields, readItem } from './item-fields.ts';
import { emptyLimit } from './limit-fields.ts';

const oil: ItemInput = itemInput.parse({
  name: 'Engine oil',
  role: 'engineOil',
  limits: [
    { measure: 'km', value: 7_500, unit: 'mi', weights: { circuit: 4, strip: 0, touring: 0.5 } },
    { measure: 'hours', value: 25.5 },
    { measure: 'months', value: 12 },
    { measure: 'date', value: '2027-03-01' },
  ],
  severe: {
    classes: ['circuit', 'autocross'],
    measure: 'sessions',
    share: 0.07,
    basis: 'used',
    limits: [{ measure: 'months', value: 6 }],
  },
  baseline: {
    on: '2026-05-01',
    time: '07:30',
    odometer: { text: '38,412', unit: 'mi' },
    historyComplete: true,
  },
  once: true,
  dueSince: '2026-06-01',
  triggers: { incidents: ['overRev', 'softPedal'], oilHotterThanC: 140, wheelsOff: true },
  warnDays: 21,
  leadDays: 12,
  source: "maker's manual, page 214",
});

const filled = (more: Partial<ItemFields> = {}): ItemFields => ({
  ...emptyItem('km'),
  name: 'Brake fluid',
  limits: [{ ...emptyLimit('months', 'km'), amount: '12' }],
  ...more,
});
const problemsOf = (fields: ItemFields) => {
  const read = readItem(fields);
  return 'problems' in read ? read.problems : {};
};
const itemOf = (fields: ItemFields) => {
  const read = readItem(fields);
  return 'item' in read ? itemInput.parse(read.item) : expect.fail(JSON.stringify(read.problems));
};

test('itemFields() and readItem() keep every part of an item, there and back', () => {
  expect(itemOf(itemFields(oil, 3, 'km'))).toEqual(oil);
  expect(itemFields(oil, 3, 'km')).toMatchObject({ baseRevision: 3, hardUse: { percent: '7' } });
});

test('readItem() leaves out what was left empty or is switched off', () => {
  const fields = filled({
    lastDone: { ...emptyItem('km').lastDone, on: '2026-05-01' },
    warnDays: '',
    leadDays: ' ',
    source: ' ',
  });
  expect(readItem(fields)).toEqual({
    item: { name: 'Brake fluid', role: 'other', limits: [{ measure: 'months', value: 12 }] },
  });
});

test('readItem() keeps the odometer of the last time exactly as typed', () => {
  const fields = filled({
    last: 'onRecord',
    lastDone: {
      on: '2026-05-01',
      time: '',
      odometer: { text: '38 412', unit: 'mi' },
      historyComplete: false,
    },
  });
  expect(itemOf(fields).baseline).toEqual({
    on: '2026-05-01',
    odometer: { text: '38 412', unit: 'mi' },
  });
});

test.each([
  ['10,000', 10_000],
  ['10 000', 10_000],
  ['7,500.5', 7_500.5],
])('readItem() reads a limit typed as "%s" as %d', (amount, value) => {
  const limits = [{ ...emptyLimit('km', 'km'), amount }];
  expect(itemOf(filled({ limits })).limits).toEqual([{ measure: 'km', value, unit: 'km' }]);
});

test('readItem() reads a decimal comma in a weight', () => {
  const empty = emptyLimit('km', 'km');
  const limits = [{ ...empty, amount: '10000', weights: { ...empty.weights, circuit: '2,5' } }];
  expect(itemOf(filled({ limits })).limits[0]).toMatchObject({ weights: { circuit: 2.5 } });
});

test('readItem() names every field that cannot be read, by the path of the server', () => {
  const empty = emptyLimit('km', 'km');
  const hard = { ...emptyItem('km').hardUse, on: true, percent: 'half' };
  const problems = problemsOf(
    filled({
      name: ' ',
      limits: [
        { ...empty, amount: 'ten', weights: { ...empty.weights, strip: 'x' } },
        emptyLimit('date', 'km'),
      ],
      hardUse: hard,
      last: 'onRecord',
      warnDays: 'soon',
    }),
  );
  expect(Object.keys(problems).sort()).toEqual([
    'item.baseline.on',
    'item.limits.0.value',
    'item.limits.0.weights.strip',
    'item.limits.1.value',
    'item.name',
    'item.severe.limits.0.value',
    'item.severe.share',
    'item.warnDays',
  ]);
  expect(problems['item.limits.0.value']).toContain('"ten" is not a number');
});

test('readItem() asks which use is hard, and for a share that can be reached', () => {
  const none = { road: false, touring: false, circuit: false, strip: false, autocross: false };
  const limits = [{ ...emptyLimit('months', 'km'), amount: '6' }];
  const hard = { ...emptyItem('km').hardUse, on: true, limits };
  expect(problemsOf(filled({ hardUse: { ...hard, classes: none, percent: '120' } }))).toEqual({
    'item.severe.classes': expect.stringContaining('at least one'),
    'item.severe.share': expect.stringContaining('at most 100'),
  });
  expect(problemsOf(filled({ hardUse: { ...hard, percent: '0' } }))).toHaveProperty([
    'item.severe.share',
  ]);
  expect(problemsOf(filled({ hardUse: { ...hard, percent: '100' } }))).toEqual({});
});

test('readItem() asks since when an item is due, and reads how hot the oil may get', () => {
  const empty = emptyItem('km').atOnce;
  const problems = problemsOf(
    filled({ atOnce: { ...empty, due: { now: true, since: '' }, oilHotterThan: 'hot' } }),
  );
  expect(problems['item.dueSince']).toContain('since when');
  expect(problems['item.triggers.oilHotterThanC']).toContain('"hot" is not a number');
  const item = itemOf(filled({ atOnce: { ...empty, oilHotterThan: '137,5' } }));
  expect(item.triggers).toEqual({ oilHotterThanC: 137.5 });
});
