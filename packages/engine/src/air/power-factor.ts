import { checkedAir, dryPressurePa, type MoistAir } from './moist-air.ts';

/** What an engine's measured power is multiplied by to have that of the standard's own air. */
export type PowerFactor = {
  factor: number;
  /** false: the air is outside of what the standard reckons with, and the factor no more than a hint */
  inRange: boolean;
  /** what has to be said beside it */
  notes: string[];
};

/** Dry air of the standard: Pa, and C + 273 as it has it. */
const DRY_PA = 99_000;
const REFERENCE_K = 298;
const RANGE = { fromC: 15, toC: 35, fromPa: 90_000, toPa: 105_000 } as const;

export const NOT_BOOSTED =
  'Not meant for engines with a turbocharger or supercharger: boost makes up for thin air in its own way.';
const OUTSIDE =
  'Outside of the air the standard reckons with, 15 to 35 °C and 90 to 105 kPa dry: no more than a hint.';

/**
 * Power correction by SAE J1349 of June 1990, for engines that breathe the air as it is:
 * CF = 1.180 (990/Pd) sqrt((Tc + 273)/298) - 0.18, Pd dry in hPa, Tc in C; 1 at 25 C and 990 hPa dry. In
 * degrees Fahrenheit the root is of (Tf + 460)/537: a copy in circulation prints 505, which does not give 1
 * at 77 F.
 *
 * @param air of the place: K, Pa (not reduced to sea level), dew point in K
 * @throws RangeError for air that is none, see `checkedAir()`
 * Source: SAE J1349 (June 1990) as reproduced by tuners; its range as it is commonly quoted. The standard's
 * own text was not at hand.
 * @example powerFactor({ temperatureK: 303.15, pressurePa: 95_000, dewPointK: 200 }).factor // 1.06
 */
export function powerFactor(air: MoistAir): PowerFactor {
  const { temperatureK } = checkedAir(air);
  const dryPa = dryPressurePa(air);
  const celsius = temperatureK - 273.15;
  const root = Math.sqrt((celsius + 273) / REFERENCE_K);
  const inRange =
    celsius >= RANGE.fromC && celsius <= RANGE.toC && dryPa >= RANGE.fromPa && dryPa <= RANGE.toPa;
  return {
    factor: 1.18 * (DRY_PA / dryPa) * root - 0.18,
    inRange,
    notes: [NOT_BOOSTED, ...(inRange ? [] : [OUTSIDE])],
  };
}
