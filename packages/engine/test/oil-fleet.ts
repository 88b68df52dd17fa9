import { formatDay, parseDay } from '../src/calendar/day-number.ts';
import { seededNumbers } from './seeded-numbers.ts';

// Engines and owners that are not the ledger's model: consumption comes in doses of another size, swings with the
// season, the stick is rounded and ends at its marks, sticks are misread, bottles and track days go unlogged.

const START = parseDay('2024-01-06');
/** Litres a dose. */
const DOSE_L = 0.022;

export type OilFile = {
  car: { id: string; spanL: number };
  entries: Record<string, unknown>[];
  asOf: { at: string; odometerKm: number };
};
export type SimulatedCar = {
  file: OilFile;
  /** litres from MAX, and L/1,000 km, at the end */
  truth: {
    level: number;
    roadRate: number;
    circuitRate: number;
    /** the rate is at least a quarter higher than 12,000 km ago */
    risen: boolean;
    /** km on the road from the end until MIN is reached */
    toMinKm: number;
  };
};

class Dice {
  readonly #next: () => number;
  constructor(seed: number) {
    this.#next = seededNumbers(seed);
  }

  chance(p: number): boolean {
    return this.#next() < p;
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.#next();
  }

  pick<T>(...of: readonly T[]): T {
    return of[Math.floor(this.#next() * of.length)] as T;
  }

  normal(): number {
    const radius = Math.sqrt(-2 * Math.log(1 - this.#next()));
    return radius * Math.cos(2 * Math.PI * this.#next());
  }

  /** Marsaglia and Tsang, A simple method for generating gamma variables (2000); scale 1. */
  gamma(shape: number): number {
    if (shape < 1) return this.gamma(shape + 1) * (1 - this.#next()) ** (1 / shape);
    const d = shape - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (;;) {
      const z = this.normal();
      const v = (1 + c * z) ** 3;
      if (v > 0 && Math.log(1 - this.#next()) < z * z * 0.5 + d - d * v + d * Math.log(v))
        return d * v;
    }
  }
}

/** An engine with its oil, as nobody sees it. */
class Engine {
  level: number;
  km = 0;
  readonly #dice: Dice;
  readonly #rate: number;
  readonly #ratio: number;
  readonly #step: { atKm: number; by: number };

  constructor(dice: Dice, level: number, totalKm: number) {
    this.#dice = dice;
    this.level = level;
    this.#rate = 0.22 * Math.exp(0.7 * dice.normal());
    this.#ratio = 3 * Math.exp(0.35 * dice.normal());
    const by = dice.chance(0.4) ? dice.between(1.8, 3) : 1;
    this.#step = { atKm: totalKm * dice.between(0.45, 0.97), by };
  }

  /** L/1,000 km at that place of its life. */
  rate(circuit: boolean, day: number, km = this.km): number {
    const season = 1 + 0.08 * Math.sin((2 * Math.PI * day) / 365.25);
    const step = km >= this.#step.atKm ? this.#step.by : 1;
    return this.#rate * season * step * (circuit ? this.#ratio : 1);
  }

  drive(km: number, circuit: boolean, day: number): void {
    if (km <= 0) return;
    const used = (km / 1000) * this.rate(circuit, day);
    this.level -= DOSE_L * this.#dice.gamma(used / DOSE_L);
    this.km += km;
  }
}

const TOTAL_KM = 21_000;
/** An owner's stick stands at its ends beyond them. */
const clamp = (level: number) => Math.min(1.25, Math.max(-0.2, level));

/** An owner who reads the stick as often, as finely and as carefully as owners do, and tops up. */
export function simulateCar(seed: number): SimulatedCar {
  const dice = new Dice(seed);
  const spanL = dice.pick(0.8, 1, 1.2, 1.5);
  const engine = new Engine(dice, -0.05 * spanL, TOTAL_KM);
  const habit = {
    everyKm: dice.between(350, 1100),
    step: dice.pick(1 / 8, 1 / 8, 1 / 4),
    topsUpBelow: dice.between(0.3, 0.65),
    eyeSd: dice.between(0.05, 0.1),
  };
  const entries: Record<string, unknown>[] = [];
  let day = START;
  let changedKm = 0;
  const log = (more: Record<string, unknown>) => {
    const recorded = entries.length;
    entries.push({ at: formatDay(day), odometerKm: Math.round(engine.km), recorded, ...more });
  };
  const pour = (litres: number, more: Record<string, unknown> = {}) => {
    engine.level += litres * (1 + 0.02 * dice.normal());
    // 4 of 100 bottles never reach the log
    if (!dice.chance(0.04)) log({ kind: 'topUp', volumeL: litres, ...more });
  };
  log({ kind: 'oilChange' });
  while (engine.km < TOTAL_KM) {
    day += Math.round(dice.between(3, 16));
    engine.drive(dice.gamma(3) * (habit.everyKm / 3), false, day);
    const fraction = 1 + engine.level / spanL;
    const misread = dice.chance(0.02) ? dice.between(-0.7, 0.7) : 0;
    const seen = clamp(fraction + habit.eyeSd * dice.normal() + misread);
    const level = Math.round(seen / habit.step) * habit.step;
    log({ kind: 'reading', level, step: habit.step });
    if (level < habit.topsUpBelow || fraction < 0.02) {
      const wanted = (1 - level) * spanL;
      pour(Math.max(0.25, Math.floor(wanted / 0.25) * 0.25));
    }
    if (dice.chance(0.12)) {
      const km = dice.between(60, 240);
      engine.drive(km, true, day);
      // 5 of 100 track days never reach the log; their distance is on the odometer all the same
      if (!dice.chance(0.05)) log({ kind: 'use', useClass: 'circuit', distanceKm: Math.round(km) });
    }
    if (engine.km - changedKm > 8000) {
      changedKm = engine.km;
      engine.level = spanL * (-0.04 + 0.08 * dice.normal());
      log({ kind: 'oilChange' });
    }
  }
  const truth = {
    level: engine.level,
    roadRate: engine.rate(false, day),
    circuitRate: engine.rate(true, day),
    risen: engine.rate(false, 0) / engine.rate(false, 0, engine.km - 12_000) >= 1.25,
  };
  const asOf = { at: formatDay(day), odometerKm: Math.round(engine.km) };
  const endKm = engine.km;
  while (engine.level > -spanL) engine.drive(50, false, day);
  return {
    file: { car: { id: `car${seed}`, spanL }, entries, asOf },
    truth: { ...truth, toMinKm: engine.km - endKm },
  };
}
