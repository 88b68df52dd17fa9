import { coldFor, correctPass, densityAltitudeM, type MoistAir } from '@quartermark/engine/air';
import { formatNumber } from '@quartermark/engine/display';
import { type DistanceUnit, KPA_PER_UNIT, type PressureUnit } from '@quartermark/engine/units';
import type { Tyre } from './air-fields.ts';

const METRES_PER_FOOT = 0.3048;

/** A sum in words: the answer, then what has to be said beside it. */
export type Summed = { words: string; beside: readonly string[] };

/** @example densityAltitude(air, 'km') // { words: 'Density altitude: 757 m (2,483 ft) …', … } */
export function densityAltitude(air: MoistAir, unit: DistanceUnit): Summed {
  const metres = densityAltitudeM(air);
  const m = `${formatNumber(metres, 0)} m`;
  const ft = `${formatNumber(metres / METRES_PER_FOOT, 0)} ft`;
  const [first, other] = unit === 'mi' ? [ft, m] : [m, ft];
  return {
    words: `Density altitude: ${first} (${other}).`,
    beside: ['The air here is as thin as standard air is at that height.'],
  };
}

/** What a pass of another day would take in the air of today. */
export function passToday(timeS: number, other: MoistAir, today: MoistAir): Summed {
  const pass = correctPass(timeS, { from: other, to: today });
  const change = pass.elapsedS - timeS;
  const by = formatNumber(Math.abs(change), 2);
  const how = change > 0 ? `${by} s more` : `${by} s less`;
  const factor = (value: number) => value.toFixed(3);
  return {
    words: `${timeS.toFixed(2)} s of that day would be about ${pass.elapsedS.toFixed(2)} s today, ${how}.`,
    beside: [
      `Correction of the power: ${factor(pass.factorFrom)} that day, ${factor(pass.factorTo)} today.`,
      ...pass.notes,
    ],
  };
}

/** What to pump cold, in the unit of the hot pressure that is wanted. @param leastPa the maker's, by the gauge */
export function coldPressure(tyre: Tyre, leastPa: number | null, unit: PressureUnit): Summed {
  const { hotGaugePa, coldK, hotK } = tyre;
  const cold = coldFor(
    { hotGaugePa, minimumGaugePa: leastPa },
    { by: 'temperatures', coldK, hotK },
  );
  const said = (pascals: number) => pressureWords(pascals, unit);
  const set = said(cold.coldGaugePa);
  const words =
    cold.minimum === 'given'
      ? `Pump ${set} cold, the least: ${said(cold.wantedColdGaugePa)} would be below it. Hot it will be ${said(cold.hotGaugePa)}.`
      : cold.wantedColdGaugePa <= 0
        ? 'No cold pressure gives that: the tyre would be flat. Check the temperatures.'
        : `Pump ${set} cold for ${said(hotGaugePa)} hot.`;
  return { words, beside: cold.notes };
}

/** Gauges show a hundredth of a bar, a tenth of a psi, a kPa. */
const DECIMALS: Readonly<Record<PressureUnit, number>> = { bar: 2, psi: 1, kPa: 0 };

const pressureWords = (pascals: number, unit: PressureUnit) =>
  `${formatNumber(pascals / 1000 / KPA_PER_UNIT[unit], DECIMALS[unit])} ${unit}`;
