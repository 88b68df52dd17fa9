import type { Draws } from './draws.ts';
import type { Habits } from './habits.ts';
import type { Target } from './trial.ts';

/** What is left of a limit, drawn without a look at the car: median and spread of its logarithm. */
const LEFT = {
  km: [3500, 1],
  hours: [6, 0.9],
  sessions: [10, 0.8],
  launches: [14, 0.8],
} as const;

/** Limits that a car of these habits would be watched by. */
export function targetsOf({ outings, everyday }: Habits): Target[] {
  const found: Target[] = [];
  if (everyday.km > 0)
    found.push(
      { measure: 'km', value: 1, weights: {} },
      { measure: 'km', value: 1, weights: { circuit: 4, autocross: 4, strip: 3 } },
    );
  if (outings === null || outings.useClass === 'touring') return found;
  if (outings.useClass === 'strip')
    return [...found, { measure: 'launches', value: 1, weights: {} }];
  const hard = { road: 0, touring: 0 };
  return [
    ...found,
    { measure: 'sessions', value: 1, weights: {} },
    { measure: 'hours', value: 1, weights: hard },
  ];
}

export function drawLeft({ measure }: Target, r: Draws): number {
  const [median, spread] = LEFT[measure];
  return r.lognormal(median, spread);
}
