import { type GearInput, gearInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { emptyGear, type GearFields, gearFields, readGear } from './gear-fields.ts';
import { gearLines } from './gear-lines.ts';

const tyres: GearInput = gearInput.parse({
  kind: 'component',
  name: 'Circuit set 2',
  sort: 'tyreSet',
  condition: 'used',
  since: '2026-05-03',
  dateCode: '0124',
  leastDepth: { text: '3,5', unit: 'mm' },
  newDepth: { text: '7', unit: 'in32' },
  roadLaw: 'us',
  remarks: 'bought with two sessions on them',
});
const pads: GearInput = gearInput.parse({
  kind: 'component',
  name: 'Front pads',
  sort: 'pads',
  condition: 'new',
  newDepth: { text: '11', unit: 'mm' },
  startDepth: { text: '7', unit: 'mm' },
});
const wrench: GearInput = { kind: 'equipment', name: 'Torque wrench', sort: 'torqueWrench' };
const ada: GearInput = { kind: 'person', name: 'Ada', remarks: 'drives on Sundays' };

const gearOf = (fields: GearFields) => {
  const read = readGear(fields);
  return 'gear' in read ? gearInput.parse(read.gear) : expect.fail(JSON.stringify(read.problems));
};
const problemsOf = (more: Partial<GearFields>) => {
  const read = readGear({ ...emptyGear('component'), name: 'Set', ...more });
  return 'problems' in read ? read.problems : {};
};

test.each([tyres, pads, wrench, ada])(
  'gearFields() and readGear() keep $name, there and back',
  (gear) => {
    expect(gearOf(gearFields(gear, 3))).toEqual(gear);
    expect(gearFields(gear, 3).baseRevision).toBe(3);
  },
);

test('readGear() leaves out what does not belong to that sort, though it was typed', () => {
  const fields = { ...gearFields(tyres, 1), componentSort: 'pads' as const };
  expect(gearOf(fields)).not.toHaveProperty('dateCode');
  expect(gearOf(fields)).toHaveProperty('leastDepth');
  expect(gearOf(fields)).not.toHaveProperty('roadLaw');
  const onTyres = { ...gearFields(pads, 1), componentSort: 'tyreSet' as const };
  expect(gearOf(onTyres)).toHaveProperty('newDepth');
  expect(gearOf(onTyres)).not.toHaveProperty('startDepth');
  const clutch = gearOf({ ...fields, componentSort: 'clutch' });
  expect(clutch).not.toHaveProperty('leastDepth');
});

test('readGear() says which field cannot be read, and why', () => {
  expect(problemsOf({ name: ' ' })['gear.name']).toContain('Fill in a name');
  expect(problemsOf({ dateCode: '5426' })['gear.dateCode']).toContain('week 54 does not exist');
  const thin = { text: 'thin', unit: 'mm' as const };
  expect(problemsOf({ leastDepth: thin })['gear.leastDepth.text']).toContain('"thin" is not');
  expect(problemsOf({ newDepth: thin })['gear.newDepth.text']).toContain('"thin" is not');
  const same = { text: '3', unit: 'mm' as const };
  expect(problemsOf({ leastDepth: same, newDepth: same })['gear.newDepth.text']).toContain(
    'New is not more than your own least',
  );
});

test('gearLines() says each thing its form can change, figures as typed', () => {
  expect(Object.fromEntries(gearLines(tyres).map(({ label, words }) => [label, words]))).toEqual({
    Name: 'Circuit set 2',
    Sort: 'Tyre set',
    'As it came': 'Used',
    'Here since': '3 May 2026',
    'Date code': '0124',
    'Your own least': '3,5 mm',
    'Measured new': '7 /32 in',
    'Law of the road': 'US, 2/32 in',
    Remarks: 'bought with two sessions on them',
  });
  expect(gearLines(wrench).map(({ words }) => words)).toEqual([
    'Torque wrench',
    'Torque wrench',
    'Not said',
  ]);
});
