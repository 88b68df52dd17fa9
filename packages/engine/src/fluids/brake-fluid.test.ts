import { expect, test } from 'vitest';
import { boilingTest } from './brake-fluid.ts';

test('boilingTest() gives the frame, and says whose minima these are', () => {
  expect(boilingTest('DOT 4', 190)).toEqual({
    dryC: 230,
    wetC: 155,
    where: 'between',
    reason:
      'Boils below what a new fluid of its class must: it has taken up water. These are minima of new fluid, and not your own limit: what you need hangs on how hot your brakes get.',
  });
  for (const boilingC of [100, 190, 260])
    expect(boilingTest('DOT 4', boilingC).reason).toMatch(/minima of new fluid, and not your own/);
  expect(boilingTest('DOT 4', 100).reason).toMatch(/^Boils below what even a new fluid with water/);
});

test.each([[Number.NaN], [59], [401]])('boilingTest() refuses %s degrees', (boilingC) => {
  expect(() => boilingTest('DOT 4', boilingC)).toThrow(
    /should be 60 to 400 °C; give what the tester/,
  );
});
