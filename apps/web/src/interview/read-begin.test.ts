import { type Proposal, proposeItems } from '@quartermark/engine/library';
import { itemInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { type Answer, answered } from './answer.ts';
import { type BeginFields, beginFields, profileWith } from './begin-fields.ts';
import { groupNow, tallyOf, tallyWords } from './group-lines.ts';
import { placed, readBegin } from './read-begin.ts';

const TODAY = { today: '2026-06-15', unit: 'km' as const };
const PROPOSALS = proposeItems({}, 'km', ['road']);
const proposal = (key: string): Proposal =>
  PROPOSALS.find((one) => one.key === key) ?? expect.fail(`${key} is not proposed`);
const read = (answers: Record<string, Answer>, more: Partial<BeginFields> = {}) =>
  readBegin({ ...beginFields({}, ''), answers, ...more }, PROPOSALS, TODAY);
const itemsOf = (answers: Record<string, Answer>, more: Partial<BeginFields> = {}) => {
  const found = read(answers, more);
  return 'items' in found ? found.items : expect.fail(JSON.stringify(found.problems));
};
const problemsOf = (answers: Record<string, Answer>, more: Partial<BeginFields> = {}) => {
  const found = read(answers, more);
  return 'problems' in found ? found.problems : {};
};

test('readBegin() adds nothing that was left open or is not on the car', () => {
  expect(itemsOf({})).toEqual([]);
  expect(itemsOf({ engineOil: answered('notHere') })).toEqual([]);
});

test('readBegin() counts what was seen good from today, with the odometer of today as typed', () => {
  const [oil] = itemsOf({ engineOil: answered('goodToday') }, { odometer: '41,000' });
  expect(oil?.key).toBe('engineOil');
  expect(itemInput.parse(oil?.item)).toMatchObject({
    name: 'Engine oil',
    role: 'engineOil',
    limits: proposal('engineOil').item.limits,
    baseline: {
      on: '2026-06-15',
      odometer: { text: '41,000', unit: 'km' },
      historyComplete: true,
    },
  });
  expect(oil?.item).not.toHaveProperty('dueSince');
});

test('readBegin() takes a day it was done on, and claims nothing of what was driven since', () => {
  const done = { ...answered('done'), on: '2026-03-01', odometer: '38 000' };
  expect(itemsOf({ engineOil: done })[0]?.item.baseline).toEqual({
    on: '2026-03-01',
    odometer: { text: '38 000', unit: 'km' },
  });
  expect(problemsOf({ engineOil: answered('done') })).toEqual({
    'engineOil.on': 'Give the day it was done.',
  });
});

test('readBegin() treats as due since today, without saying that it was ever done', () => {
  const [oil] = itemsOf({ engineOil: answered('dueNow') });
  expect(oil?.item).toMatchObject({ dueSince: '2026-06-15' });
  expect(oil?.item).not.toHaveProperty('baseline');
});

test('readBegin() asks for the value of the manual where the library has none', () => {
  expect(proposal('airFilter').askManual).toBe(true);
  const good = answered('goodToday');
  expect(problemsOf({ airFilter: good })['airFilter.distance']).toContain('leave it open');
  const given = { ...good, distance: '30,000', months: '24' };
  expect(itemsOf({ airFilter: given })[0]?.item).toMatchObject({
    source: 'The maker’s manual',
    limits: [
      { measure: 'km', value: 30_000, unit: 'km' },
      { measure: 'months', value: 24 },
    ],
  });
  expect(itemsOf({ airFilter: { ...good, months: '24' } })[0]?.item.limits).toEqual([
    { measure: 'months', value: 24 },
  ]);
});

test('readBegin() asks for the date of a label', () => {
  const good = answered('goodToday');
  expect(problemsOf({ insurance: good })['insurance.label']).toContain('label');
  expect(itemsOf({ insurance: { ...good, label: '2027-01-31' } })[0]?.item).toMatchObject({
    source: 'The label',
    limits: [{ measure: 'date', value: '2027-01-31' }],
  });
});

test('readBegin() refuses an odometer of today that is no number', () => {
  expect(problemsOf({}, { odometer: 'many' }).odometer).toContain('"many" is not a number');
});

test('placed() puts the words of the server beside the answer they are about', () => {
  const fields = {
    'items.1.item.baseline.on': 'Too early',
    'items.0.item.limits.1.value': 'Too many',
    'items.0.item.baseline.odometer.text': 'No number',
    carId: 'No such car',
  };
  expect(placed(fields, ['engineOil', 'coolant'])).toEqual({
    'coolant.on': 'Too early',
    'engineOil.months': 'Too many',
    'engineOil.odometer': 'No number',
  });
});

test('profileWith() changes what was asked and leaves the rest of the profile', () => {
  const before = { sump: 'wet' as const, octane: 98, gearbox: 'manual' };
  const fields = { ...beginFields(before, ''), sump: 'dry' as const, gearbox: '' };
  expect(profileWith(before, fields)).toEqual({ sump: 'dry', octane: 98 });
});

test('tallyWords() says what is added and what is not', () => {
  const answers = { a: answered('goodToday'), b: answered('notHere') };
  expect(tallyWords(tallyOf(['a', 'b', 'c', 'd'], answers))).toBe(
    '1 item will be added. 2 left open: not added, and not watched. 1 not on this car: not added.',
  );
  expect(tallyWords(tallyOf(['c'], answers))).toMatch(/^Nothing is added yet\. 1 left open/);
  expect([groupNow(0, 3), groupNow(2, 3), groupNow(3, 3)]).toEqual([
    '3 open',
    '2 of 3 answered',
    'all answered',
  ]);
});
