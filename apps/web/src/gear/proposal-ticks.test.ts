import { proposeGearItems } from '@quartermark/engine/library';
import { itemInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { JUST_TICKED, type Ticks, tickedItems } from './proposal-ticks.ts';

const person = proposeGearItems({ kind: 'person', name: 'Ada' });
const wrench = proposeGearItems({ kind: 'equipment', name: 'Wrench', sort: 'torqueWrench' });
const engine = proposeGearItems({
  kind: 'component',
  name: 'Engine 2',
  sort: 'engine',
  condition: 'used',
});

function ticked(proposals: typeof person, ticks: Ticks) {
  const problems: Record<string, string> = {};
  return { items: tickedItems(proposals, ticks, problems), problems };
}

test('tickedItems() adds what is ticked and nothing else', () => {
  expect(person.length).toBeGreaterThan(1);
  expect(ticked(person, {}).items).toEqual([]);
  const { items } = ticked(wrench, { torqueWrench: { ...JUST_TICKED, lastDone: '2025-07-01' } });
  expect(items.map(({ item }) => itemInput.parse(item))).toMatchObject([
    { limits: [{ measure: 'months', value: 12 }], baseline: { on: '2025-07-01' } },
  ]);
});

test('tickedItems() takes the date of a label, and asks for it where it is missing', () => {
  const { items } = ticked(person, { helmet: { ...JUST_TICKED, label: '2027-12-31' } });
  expect(items[0]?.item).toMatchObject({
    name: 'Helmet',
    source: 'The label',
    limits: [{ measure: 'date', value: '2027-12-31' }],
  });
  expect(ticked(person, { helmet: JUST_TICKED }).problems['helmet.label']).toContain('label');
});

test('tickedItems() takes hours or months from the maker where the library has no value', () => {
  const { items } = ticked(engine, { rebuild: { ...JUST_TICKED, hours: '40', months: '36' } });
  expect(items[0]?.item.limits).toEqual([
    { measure: 'hours', value: 40 },
    { measure: 'months', value: 36 },
  ]);
  expect(ticked(engine, { rebuild: JUST_TICKED }).problems).toHaveProperty(['rebuild.hours']);
  expect(
    ticked(engine, { rebuild: { ...JUST_TICKED, hours: 'many' } }).problems['rebuild.hours'],
  ).toContain('"many" is not a number');
});
