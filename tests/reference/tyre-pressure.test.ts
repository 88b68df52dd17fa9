import { coldFor, gaugeAt } from '@quartermark/engine/air';
import { KPA_PER_UNIT } from '@quartermark/engine/units';
import { expect, test } from 'vitest';
import figures from './data/tyre-pressure.json' with { type: 'json' };

/** Sources stand in the data file beside the figures. */
const kelvin = (degrees: number) => degrees + 273.15;

test.each(figures.gauge)('gaugeAt() answers $name as printed, to 0.5 kPa', (example) => {
  const { gaugePa, fromC, toC, atmospherePa, publishedPa, volumeRatio } = example;
  const found = gaugeAt({ gaugePa, fromK: kelvin(fromC), toK: kelvin(toC) }, atmospherePa);
  // ours holds the volume: one that grows lowers the absolute pressure by as much
  const grown = (found + atmospherePa) / volumeRatio - atmospherePa;
  expect(Math.abs(grown - publishedPa)).toBeLessThanOrEqual(500);
});

test('gaugeAt() answers an example in pounds on the square inch, to a tenth', () => {
  const { gauge, fromC, toC, atmosphere, published } = figures.psi;
  const pascals = 1000 * KPA_PER_UNIT.psi;
  const found = gaugeAt(
    { gaugePa: gauge * pascals, fromK: kelvin(fromC), toK: kelvin(toC) },
    atmosphere * pascals,
  );
  expect(found / pascals).toBeCloseTo(published, 1);
});

test('gaugeAt() and coldFor() agree with the temperature Schaum finds for two pressures', () => {
  const { coldGaugePa, coldC, hotGaugePa, atmospherePa, publishedHotK } = figures.temperature;
  const at = { gaugePa: coldGaugePa, fromK: kelvin(coldC), toK: publishedHotK };
  expect(Math.abs(gaugeAt(at, atmospherePa) - hotGaugePa)).toBeLessThan(300);
  const warming = { by: 'temperatures', coldK: kelvin(coldC), hotK: publishedHotK } as const;
  const found = coldFor({ hotGaugePa, minimumGaugePa: null }, warming, atmospherePa);
  expect(Math.abs(found.coldGaugePa - coldGaugePa)).toBeLessThan(300);
});

test('gaugeAt() raises the absolute pressure by the ratio of Light and Matter', () => {
  const { fromC, toC, published } = figures.ratio;
  const air = 101_325;
  const found = gaugeAt({ gaugePa: 200_000, fromK: kelvin(fromC), toK: kelvin(toC) }, air);
  expect((found + air) / (200_000 + air)).toBeCloseTo(published, 2);
});
