import { HOT_GRADES, leastAt150, readGrade, WINTER_GRADES } from '@quartermark/engine/oil';
import { describe, expect, it } from 'vitest';
import j300 from './data/sae-j300.json' with { type: 'json' };

/** The source stands in the data file beside the figures. */
describe('the viscosity grades of SAE J300', () => {
  it.each(j300.winter)('have $grade', (row) => {
    const { winter } = readGrade(row.grade) ?? {};
    expect(WINTER_GRADES.find(({ grade }) => grade === winter)).toEqual({
      grade: Number.parseInt(row.grade, 10),
      crankingMaxMpas: row.ccsMax_mPas,
      crankingC: row.ccsTempC,
      pumpingMaxMpas: row.mrvMax_mPas,
      pumpingC: row.mrvTempC,
      at100Min: row.kv100Min_mm2s,
    });
  });

  it.each(j300.hot)('have $grade', (row) => {
    const hot = Number.parseInt(row.grade, 10);
    const found = HOT_GRADES.find(({ grade }) => grade === hot);
    expect(found?.at100Min).toBe(row.kv100Min_mm2s);
    expect(found?.at100Below).toBe(row.kv100MaxExclusive_mm2s);
    // grade 40 stands there twice, each with the oils it is meant for
    const listed = /\((.*)\)/.exec(row.grade)?.[1]?.split(', ') ?? [row.grade];
    for (const name of listed) {
      const grade = readGrade(name);
      expect(grade?.hot).toBe(hot);
      expect(grade && leastAt150(grade)).toBe(row.hths150Min_mPas);
    }
  });

  it('have no others', () => {
    expect(WINTER_GRADES).toHaveLength(j300.winter.length);
    expect(HOT_GRADES).toHaveLength(
      new Set(j300.hot.map(({ grade }) => Number.parseInt(grade, 10))).size,
    );
  });

  it('are ordered by how thick they are', () => {
    const rising = (all: number[]) =>
      all.every((one, at) => at === 0 || one >= (all[at - 1] as number));
    expect(rising(HOT_GRADES.map(({ at100Min }) => at100Min))).toBe(true);
    expect(rising(WINTER_GRADES.map(({ crankingC }) => crankingC))).toBe(true);
  });
});
