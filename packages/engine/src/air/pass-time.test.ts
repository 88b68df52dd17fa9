import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { correctPass } from './pass-time.ts';
import { powerFactor } from './power-factor.ts';

const air = (celsius: number, hPa: number) => ({
  temperatureK: 273.15 + celsius,
  pressurePa: 100 * hPa,
  dewPointK: 273.15 + celsius - 10,
});
const hot = air(34, 950);
const cool = air(18, 1010);

describe('correctPass()', () => {
  test('correctPass() takes the cube root of what the power changes by', () => {
    const { elapsedS, factorFrom, factorTo, inRange, notes } = correctPass(12, {
      from: hot,
      to: cool,
    });
    expect([factorFrom, factorTo]).toEqual([powerFactor(hot).factor, powerFactor(cool).factor]);
    expect((elapsedS / 12) ** 3).toBeCloseTo(factorTo / factorFrom, 12);
    expect(elapsedS).toBeGreaterThan(11.4);
    expect(elapsedS).toBeLessThan(11.7);
    expect(inRange).toBe(true);
    expect(notes).toEqual([
      expect.stringMatching(/Not meant for engines with a turbocharger/),
      expect.stringMatching(/traction, wind/),
    ]);
  });

  test('correctPass() undoes itself, and is quicker in thicker air', () => {
    const celsius = fc.integer({ min: 0, max: 40 });
    const hPa = fc.integer({ min: 850, max: 1040 });
    fc.assert(
      fc.property(celsius, hPa, celsius, hPa, (a, b, c, d) => {
        const [from, to] = [air(a, b), air(c, d)];
        const there = correctPass(13.5, { from, to });
        expect(correctPass(there.elapsedS, { from: to, to: from }).elapsedS).toBeCloseTo(13.5, 9);
        expect(Math.sign(there.elapsedS - 13.5)).toBe(
          Math.sign(Math.round((there.factorTo - there.factorFrom) * 1e12)),
        );
      }),
    );
  });

  test('correctPass() says where one of the days is outside of the range, once', () => {
    const { inRange, notes } = correctPass(12, { from: air(5, 1010), to: air(4, 1010) });
    expect(inRange).toBe(false);
    expect(notes.filter((note) => /no more than a hint/.test(note))).toHaveLength(1);
    expect(correctPass(12, { from: hot, to: air(4, 1010) }).inRange).toBe(false);
  });

  test.each([[0], [61], [Number.NaN]])('correctPass() refuses %s s', (seconds) => {
    expect(() => correctPass(seconds, { from: hot, to: cool })).toThrow(/elapsed time.*1 to 60 s/);
  });
});
