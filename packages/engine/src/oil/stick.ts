import type { StickCondition } from './operation.ts';

/** What decides how far a level can be compared with the car's own procedure. */
export type StickCar = {
  /** litres between MIN and MAX, > 0 */
  spanL: number;
  /** litres in the engine at MAX; null where not known */
  capacityL: number | null;
  drySump: boolean;
  procedure: StickCondition | null;
};

/**
 * How a level was read: by the car's procedure, a little early after the stop, otherwise but to be corrected by
 * thermal expansion, or not to be compared.
 */
export type StickLook = {
  is: 'on' | 'poor' | 'corrected' | 'off';
  /** litres to add to what was read */
  correctionL: number;
};

/** After this long at rest an engine reads as a cold one. Common practice, not measured. */
const COLD_AFTER_MINUTES = 60;
/** Oil in use, and oil at rest, in degrees Celsius. Common practice. */
const TEMPERATURE_C = { hot: 90, cold: 20 };
/** Share of its volume by which oil grows per kelvin. */
const EXPANSION_PER_K = 0.0007;
/** Read earlier than this part of the procedure's minutes, oil is still on its way down. */
const EARLY_PART = 0.5;

function stateOf({ state, minutesAfterStop }: StickCondition): StickCondition['state'] {
  const rested = (minutesAfterStop ?? 0) > COLD_AFTER_MINUTES;
  return state === 'hotStopped' && rested ? 'cold' : state;
}

/**
 * Judges how a level was read. A dry sump without a stated procedure is taken to be read hot and idling, since
 * after a stop its oil runs back out of the tank or into it.
 *
 * correction = 0.0007 x capacity x (T of the procedure - T of the reading), litres; wet sump, hot against cold.
 *
 * @param condition null where the person said nothing
 * Source: thermal expansion of mineral oil, engineering handbooks; the rest common practice, no source.
 */
export function judgeStick(car: StickCar, condition: StickCondition | null): StickLook {
  const procedure = car.procedure ?? (car.drySump ? { state: 'hotIdle' as const } : null);
  if (procedure === null || condition === null) return { is: 'on', correctionL: 0 };
  const [own, read] = [stateOf(procedure), stateOf(condition)];
  if (own === read)
    return { is: isEarly(procedure, condition, own) ? 'poor' : 'on', correctionL: 0 };
  const { capacityL } = car;
  if (car.drySump || own === 'hotIdle' || read === 'hotIdle' || capacityL === null)
    return { is: 'off', correctionL: 0 };
  const usual = (state: StickCondition['state']) =>
    state === 'cold' ? TEMPERATURE_C.cold : TEMPERATURE_C.hot;
  const warmer = usual(own) - (condition.oilTempC ?? usual(read));
  return { is: 'corrected', correctionL: EXPANSION_PER_K * capacityL * warmer };
}

function isEarly(
  procedure: StickCondition,
  condition: StickCondition,
  state: StickCondition['state'],
): boolean {
  if (state !== 'hotStopped' || condition.minutesAfterStop === undefined) return false;
  return condition.minutesAfterStop < EARLY_PART * (procedure.minutesAfterStop ?? 0);
}
