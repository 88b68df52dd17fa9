import { tyreAgeSentence } from '@quartermark/engine/display';
import { madeFrom, readDateCode, wearFloors } from '@quartermark/engine/gear';
import { depthMm } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import figures from './data/tyres.json' with { type: 'json' };

type Code = { code: string; week?: number; year?: number; threeDigit?: boolean };
/** Sources stand in the data file beside the figures. */
const codes: Code[] = figures.codes;

test.each(codes.map((it) => [it.code, it] as const))(
  'readDateCode() reads or refuses %s as 49 CFR 574.5 has it',
  (code, { week, year, threeDigit }) => {
    const read = readDateCode(code);
    if (year !== undefined) expect(read).toEqual({ week, year });
    else
      expect(read).toEqual({
        problem: expect.stringMatching(threeDigit ? /three digits.*before 2000/ : /does not exist/),
      });
  },
);

test('2/32 in are less than the 1.6 mm of the EU', () => {
  const { usMinInch32nds, usMin_mm, euMin_mm } = figures.tread;
  expect(depthMm({ text: String(usMinInch32nds), unit: 'in32' })).toBe(usMin_mm);
  expect(usMin_mm).toBeLessThan(euMin_mm);
});

test('wearFloors() has the floors of both laws for a tread, and the one of the road it goes on', () => {
  const { usMin_mm, euMin_mm } = figures.tread;
  const floors = (roadLaw?: 'eu' | 'us') =>
    wearFloors(
      {
        kind: 'component',
        name: 'x',
        sort: 'tyreSet',
        condition: 'new',
        ...(roadLaw && { roadLaw }),
      },
      'tread',
    ).map(({ mm }) => mm);
  expect(floors()).toEqual([euMin_mm, usMin_mm]);
  expect(floors('eu')).toEqual([euMin_mm]);
  expect(floors('us')).toEqual([usMin_mm]);
});

test('tyreAgeSentence() asks for a yearly look and for new ones on the days the advice gives', () => {
  const { lookYearlyYears, outYears } = figures.age;
  const code = { week: 1, year: 2020 };
  const sessions = { amount: 0, known: true };
  const life = { ageFrom: code, ageUnread: null, sessions };
  const [year = '', ...rest] = madeFrom(code).split('-');
  const on = (years: number) => [Number(year) + years, ...rest].join('-');
  const dayBefore = (years: number) => `${Number(year) + years}-01-04`;
  expect(madeFrom(code)).toBe('2020-01-05');
  expect(tyreAgeSentence(life, dayBefore(lookYearlyYears))).toMatch(/A yearly look from/);
  expect(tyreAgeSentence(life, on(lookYearlyYears))).toMatch(/looked at every year now/);
  expect(tyreAgeSentence(life, dayBefore(outYears))).toMatch(/looked at every year now/);
  expect(tyreAgeSentence(life, on(outYears))).toMatch(/Out by age/);
});
