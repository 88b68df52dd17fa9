import { draws } from './draws.ts';
import { drawLeft, targetsOf } from './targets.ts';
import { ask, drawTrial, trueUse } from './trial.ts';

/** What was said of a limit at the end of a planned event, and whether it lasted. */
export type Readiness = { pReady: number; lasted: boolean };

/** The next planned event of each of so many cars, against the limits that it wears. */
export function foreseeReadiness(cars: number, firstSeed = 1): Readiness[] {
  const found: Readiness[] = [];
  for (let seed = firstSeed; seed < firstSeed + cars; seed += 1) {
    const trial = drawTrial(seed);
    const r = draws(seed + 700_001);
    for (const target of targetsOf(trial.habits)) {
      const said = ask(trial, target, drawLeft(target, r), true);
      const next = said.atEvent.find(({ date }) => date > trial.diary.car.asOf);
      if (next === undefined || next.pReady === null) continue;
      const planned = Number(next.id);
      const use = trueUse(trial, target, trial.future(0, planned));
      const last = planned + (trial.habits.outings?.days ?? 1) - 1;
      let sum = 0;
      for (let day = trial.diary.serviceDay + 1; day <= last; day += 1) sum += use[day] as number;
      found.push({ pReady: next.pReady, lasted: sum < said.limit });
    }
  }
  return found;
}
