import type { MoistAir } from './moist-air.ts';
import { powerFactor } from './power-factor.ts';
import { within } from './within.ts';

/** The elapsed time of a pass as it would be in other air. */
export type CorrectedPass = {
  elapsedS: number;
  /** power correction of the air it was run in, and of the other; more: thinner air */
  factorFrom: number;
  factorTo: number;
  /** false: one of the airs is outside of what the standard reckons with */
  inRange: boolean;
  notes: string[];
};

/** Elapsed time falls with the cube root of power. Common practice, no source. */
const EXPONENT = 1 / 3;
const TRACTION = 'For the air alone: traction, wind and the start are as they were.';

/**
 * What a drag-strip pass of one day would take on another: t x (CF to / CF from)^(1/3), with the power
 * correction of `powerFactor()`. Thicker air is quicker.
 *
 * @param elapsedS 1 to 60 s
 * @param air from: in which it was run; to: in which it is to be compared
 * @throws RangeError for a time or air that is none
 * Source: exponent by common practice, no published source; not for boosted engines.
 * @example correctPass(12, { from: hotDay, to: coldDay }).elapsedS // 11.8
 */
export function correctPass(
  elapsedS: number,
  { from, to }: { from: MoistAir; to: MoistAir },
): CorrectedPass {
  const time = within(elapsedS, {
    what: 'elapsed time',
    unit: 's',
    from: 1,
    to: 60,
    give: 'the time of the pass in seconds, as the ticket has it',
  });
  const [before, after] = [powerFactor(from), powerFactor(to)];
  return {
    elapsedS: time * (after.factor / before.factor) ** EXPONENT,
    factorFrom: before.factor,
    factorTo: after.factor,
    inRange: before.inRange && after.inRange,
    notes: [...new Set([...before.notes, ...after.notes]), TRACTION],
  };
}
