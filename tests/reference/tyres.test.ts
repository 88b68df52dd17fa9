import { readDateCode } from '@quartermark/engine/gear';
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
