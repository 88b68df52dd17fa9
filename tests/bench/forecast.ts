import { daysBetween } from '@quartermark/engine/calendar';
import { gammaTail } from '@quartermark/engine/forecast';
import type { CarCase } from '@quartermark/engine/history';
import { analyseCase } from '@quartermark/engine/wear';
import { busyCar } from './busy-car.ts';
import { callsOf } from './calls.ts';
import type { Finding } from './finding.ts';
import { type Times, timed } from './statistics.ts';

const ROUNDS = 40;
const WARM_UP = 15;
/** How far a forecast looks. */
const HORIZON_DAYS = 1096;
const ONE = { years: 2, items: 8 };

/**
 * One busy car, its due dates beside a bare loop, and how the time grows with the log and with the items.
 */
export async function forecastFindings(): Promise<Finding[]> {
  return [
    await besideTheBareLoop(),
    await growth('a log of 4 years', { ...ONE, years: 4 }, 'the same car with 2 years', ONE, 2),
    await growth('a log of 8 years', { ...ONE, years: 8 }, 'the same car with 2 years', ONE, 4),
    await growth('16 items', { ...ONE, items: 16 }, 'the same car with 8', ONE, 2),
    await growth('32 items', { ...ONE, items: 32 }, 'the same car with 8', ONE, 4),
  ];
}

async function besideTheBareLoop(): Promise<Finding> {
  const car = busyCar(ONE);
  const tails = await callsOf('gammaTail', '/forecast/gamma-tail.ts', () => analyseCase(car));
  if (tails === 0) throw new Error('no gamma tail was evaluated');
  const limits = car.items.reduce((sum, item) => sum + item.limits.length, 0);
  const days = daysOf(car) + HORIZON_DAYS;
  const { one, other } = await inTurn(
    () => analyseCase(car).items.length,
    () => bareLoop(days, limits, tails),
  );
  return {
    what: `due dates of a car, ${car.items.length} items with ${limits} limits, ${car.entries.length} entries, ${days} days`,
    took: one,
    beside: {
      what: `a bare loop: for each of the ${limits} limits the same ${days} days with two faded sums, a monthly one and one added up, and then ${tails} gamma tails, as many as were counted in the answer`,
      took: other,
    },
    goal: { ratio: 3 },
  };
}

type Size = Parameters<typeof busyCar>[0];

/** Grows no faster than what it is given, with half as much again for whatever else the machine does. */
async function growth(
  what: string,
  size: Size,
  besideWhat: string,
  besideSize: Size,
  times: number,
): Promise<Finding> {
  const [large, small] = [busyCar(size), busyCar(besideSize)];
  const { one, other } = await inTurn(
    () => analyseCase(large).items.length,
    () => analyseCase(small).items.length,
  );
  return {
    what: `due dates of a car with ${what}`,
    took: one,
    beside: { what: besideWhat, took: other },
    goal: { ratio: 1.5 * times },
  };
}

/** Both in turn, so that whatever else this machine does falls on both. */
async function inTurn(
  work: () => number,
  beside: () => number,
): Promise<{ one: Times; other: Times }> {
  const [one, other]: [Times, Times] = [[], []];
  let kept = 0;
  for (let round = 0; round < WARM_UP + ROUNDS; round += 1) {
    const first = await timed(() => {
      kept += work();
    });
    const second = await timed(() => {
      kept += beside();
    });
    if (round < WARM_UP) continue;
    one.push(first);
    other.push(second);
  }
  if (!(kept > 0)) throw new Error('nothing was worked out');
  return { one, other };
}

function daysOf({ entries, asOf }: CarCase): number {
  const [first = asOf] = entries.map(({ date }) => date).sort();
  return daysBetween(first, asOf) + 1;
}

function bareLoop(days: number, limits: number, tails: number): number {
  let kept = 0;
  for (let limit = 0; limit < limits; limit += 1) {
    const use = new Float64Array(days);
    const months = new Float64Array(12);
    const [fast, slow] = [Math.exp(-1 / 90), Math.exp(-1 / 365)];
    let [recent, long, sum] = [0, 0, 0];
    for (let day = 0; day < days; day += 1) {
      const y = 20 + ((day + limit) % 9);
      recent = recent * fast + y;
      long = long * slow + y;
      const month = day % 12;
      months[month] = (months[month] as number) + y;
      sum += y;
      use[day] = sum;
    }
    kept += recent + long + (months[limit % 12] as number) + (use[days - 1] as number);
  }
  for (let tail = 0; tail < tails; tail += 1) kept += gammaTail(4 + (tail % 40), 2 + (tail % 53));
  return kept;
}
