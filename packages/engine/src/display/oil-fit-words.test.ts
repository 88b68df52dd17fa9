import { describe, expect, it } from 'vitest';
import { oilFitSentences } from './oil-fit-words.ts';

const MANUAL = 'The car’s manual says what it allows.';
const grades = (asked: string, poured: string) =>
  oilFitSentences({ grade: asked }, { grade: poured });

describe('oilFitSentences() of a grade', () => {
  it.each([
    ['5W-40', '5w40'],
    ['5W-40', '0W-40'],
    ['SAE 40', '15W-40'],
    ['5W-40', ''],
    ['', '5W-40'],
    ['whatever the dealer has', '5W-40'],
  ])('says nothing where %j is asked for and %j poured', (asked, poured) => {
    expect(grades(asked, poured)).toEqual([]);
  });

  it.each([
    ['10W-60', '10W-40', 'is thinner when hot'],
    ['5W-30', '5W-50', 'is thicker when hot'],
    ['5W-40', '15W-40', 'is rated only for warmer cold starts'],
    ['15W-40', '5W-40', 'may be thinner at 150 °C'],
    ['0W-30', '10W-40', 'is thicker when hot, and is rated only for warmer cold starts'],
    ['5W-40', 'SAE 50', 'is thicker when hot, and is rated only for warmer cold starts'],
  ])('tells what is asked for from what was poured: %s, %s', (asked, poured, words) => {
    expect(grades(asked, poured)).toEqual([
      `${poured} ${words} than the ${asked} this car asks for. ${MANUAL}`,
    ]);
  });

  it('says that it could not compare what is no grade', () => {
    expect(grades('5W-40', '7W-41')).toEqual([
      '“7W-41” is no viscosity grade we know, so it is not compared with 5W-40.',
    ]);
  });
});

describe('oilFitSentences() of an approval', () => {
  const approvals = (asked?: string, poured?: string) =>
    oilFitSentences({ approval: asked }, { approval: poured });

  it('names what is asked for and not on the oil', () => {
    expect(approvals('ACEA C3, API SP', 'API SP')).toEqual([
      `Not named on this oil: ACEA C3, which this car asks for. ${MANUAL}`,
    ]);
  });

  it.each([
    ['ACEA C3', 'API SP, ACEA C3'],
    ['ACEA C3', undefined],
    [undefined, 'API SP'],
    ['ACEA C3', '  '],
  ])('says nothing where %j is asked for and %j is on it', (asked, poured) => {
    expect(approvals(asked, poured)).toEqual([]);
  });
});
