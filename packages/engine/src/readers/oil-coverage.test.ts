import { describe, expect, it } from 'vitest';
import { simulateCar } from '../../test/oil-fleet.ts';
import type { Quantiles } from '../oil/answers.ts';
import { oilLog } from './oil-log.ts';

const CARS = 200;
/**
 * How often the intervals may hold, stated before the first run. The method was chosen on other simulated logs, where
 * 80 of 100 held 80 to 91 and 90 of 100 held 85 to 97; beside that, 3.3 binomial standard deviations of 200 cars.
 */
const HELD = { 80: { low: 0.8, high: 0.91 }, 90: { low: 0.85, high: 0.97 } };
const DEVIATIONS = 3.3;

const fleet = Array.from({ length: CARS }, (_, at) => {
  const { file, truth } = simulateCar(1000 + at);
  return { truth, oil: oilLog(file).oil };
});

const binomialSd = (p: number, n: number) => Math.sqrt((p * (1 - p)) / n);

/** Whether so large a share of n may hold by what was stated. */
function mayHold(share: number, n: number, of: keyof typeof HELD): boolean {
  const { low, high } = HELD[of];
  return (
    share >= low - DEVIATIONS * binomialSd(low, n) &&
    share <= high + DEVIATIONS * binomialSd(high, n)
  );
}

/** The middle half of an interval around its median, on that scale. */
const halved = (low: number, middle: number, high: number): [number, number] => [
  middle - (middle - low) / 2,
  middle + (high - middle) / 2,
];

type Told = { true: number; said: Quantiles };
const CLAIMS: Record<string, (one: (typeof fleet)[number]) => Told> = {
  'the level': ({ truth, oil }) => ({ true: truth.level, said: oil.level }),
  'the road rate': ({ truth, oil }) => ({ true: truth.roadRate, said: oil.roadRate }),
  'the circuit rate': ({ truth, oil }) => ({ true: truth.circuitRate, said: oil.hardRate }),
};

describe(`oilLog() of ${CARS} engines that are not its model`, () => {
  const known = fleet.filter(({ oil }) => oil.status !== 'none');
  const share = (held: (one: (typeof fleet)[number]) => boolean) =>
    known.filter(held).length / known.length;

  it('has something to say of nearly all of them', () => {
    expect(known.length).toBeGreaterThan(0.95 * CARS);
  });

  describe.each(Object.entries(CLAIMS))('%s', (_, claim) => {
    it.each([80, 90] as const)('lies within %d of 100 intervals as often as stated', (of) => {
      const found = share((one) => {
        const { said, true: is } = claim(one);
        return of === 80 ? is >= said.p10 && is <= said.p90 : is >= said.p05 && is <= said.p95;
      });
      expect(mayHold(found, known.length, of), `${found}`).toBe(true);
    });

    it.each([80, 90] as const)('would not be taken for stated if %d of 100 were halved', (of) => {
      const found = share((one) => {
        const { said, true: is } = claim(one);
        const [low, high] =
          of === 80 ? halved(said.p10, said.p50, said.p90) : halved(said.p05, said.p50, said.p95);
        return is >= low && is <= high;
      });
      expect(mayHold(found, known.length, of), `${found}`).toBe(false);
    });
  });

  it('is rarely at MIN before the distance at which it could be', () => {
    // 5 of 100 aimed at; the method reached up to 9.5 on other logs
    const sooner = share(({ truth, oil }) => truth.toMinKm < oil.distanceToMin.road.p05);
    expect(sooner, `${sooner}`).toBeLessThan(0.095 + DEVIATIONS * binomialSd(0.095, known.length));
  });

  it('is at MIN before the likely distance somewhat oftener than every second time', () => {
    // of 100 engines 40 have begun to use more, not all of them seen yet, and bottles were forgotten
    const sooner = share(({ truth, oil }) => truth.toMinKm < oil.distanceToMin.road.p50);
    const [low, high] = [0.5, 0.6].map((p) => DEVIATIONS * binomialSd(p, known.length));
    expect(sooner, `${sooner}`).toBeGreaterThan(0.5 - (low as number));
    expect(sooner, `${sooner}`).toBeLessThan(0.6 + (high as number));
  });

  it('calls use risen about as often as it rose, at any probability it says', () => {
    const groups = [
      [0, 0.2],
      [0.2, 0.7],
      [0.7, 1.01],
    ] as const;
    for (const [from, below] of groups) {
      const said = fleet.filter(
        ({ oil }) => oil.riseProbability >= from && oil.riseProbability < below,
      );
      expect(said.length, `${from}`).toBeGreaterThan(10);
      const mean = said.reduce((sum, { oil }) => sum + oil.riseProbability, 0) / said.length;
      const found = said.filter(({ truth }) => truth.risen).length / said.length;
      const width = 0.1 + DEVIATIONS * binomialSd(Math.min(0.9, Math.max(0.1, mean)), said.length);
      expect(Math.abs(found - mean), `${from}: said ${mean}, found ${found}`).toBeLessThan(width);
    }
  });
});
