import type { ReadingCondition } from '../log/entry.ts';

export type StickProcedure = {
  state: ReadingCondition['state'];
  minutesAfterStop?: number | undefined;
};

/** What decides how far a reading can be compared with the car's own procedure. */
export type StickCar = {
  drySump: boolean;
  procedure: StickProcedure | null;
  capacityL: number | null;
};

/** After this long at rest an engine reads as a cold one (common practice, not measured). */
const COLD_AFTER_MINUTES = 60;

function effective({ state, minutesAfterStop }: StickProcedure): StickProcedure['state'] {
  const rested = (minutesAfterStop ?? 0) > COLD_AFTER_MINUTES;
  return state === 'hotStopped' && rested ? 'cold' : state;
}

/**
 * How a reading compares with the car's own procedure: `on` = the same state, or nothing is known that
 * says otherwise; `corrected` = a wet sump read cold instead of hot or the reverse, which thermal
 * expansion explains; `off` = not comparable, such as a dry sump read cold, where part of the oil has
 * run back to the tank or out of it.
 *
 * A dry sump without a stated procedure is taken to be read hot and idling (common practice).
 *
 * @param condition of the entry; undefined where the person said nothing
 */
export function judgeReading(
  car: StickCar,
  condition: StickProcedure | undefined,
): 'on' | 'corrected' | 'off' {
  const procedure = car.procedure ?? (car.drySump ? { state: 'hotIdle' as const } : null);
  if (procedure === null || condition === undefined) return 'on';
  const [own, read] = [effective(procedure), effective(condition)];
  if (own === read) return 'on';
  if (car.drySump || own === 'hotIdle' || read === 'hotIdle' || car.capacityL === null)
    return 'off';
  return 'corrected';
}
