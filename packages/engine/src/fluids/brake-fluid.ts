/** Classes of brake fluid of FMVSS 116, as bottles name them. */
export const BRAKE_FLUIDS = ['DOT 3', 'DOT 4', 'DOT 5', 'DOT 5.1'] as const;
export type BrakeFluid = (typeof BRAKE_FLUIDS)[number];

/** The least a new fluid of a class boils at, C: as filled from the bottle, and with some 3.7 % of water in it. */
export type NewFluidMinima = { dryC: number; wetC: number };

/**
 * Boiling points that a new fluid must at least have.
 *
 * Source: FMVSS No. 116 (49 CFR 571.116), S5.1.1 and S5.1.2, as reproduced by an oil dealer.
 */
export const NEW_FLUID_MINIMA: Readonly<Record<BrakeFluid, NewFluidMinima>> = {
  'DOT 3': { dryC: 205, wetC: 140 },
  'DOT 4': { dryC: 230, wetC: 155 },
  'DOT 5': { dryC: 260, wetC: 180 },
  'DOT 5.1': { dryC: 260, wetC: 180 },
};

/** Where a boiling test lies in the frame of its class. */
export type BoilingTest = NewFluidMinima & {
  /** at or above the new fluid's minimum; between the two; below what even a new fluid with water must have */
  where: 'asNew' | 'between' | 'belowWet';
  /** what has to be said beside it */
  reason: string;
};

const FRAME =
  'These are minima of new fluid, and not your own limit: what you need hangs on how hot your brakes get.';
const WORDS = {
  asNew: 'Boils as a new fluid of its class must.',
  between: 'Boils below what a new fluid of its class must: it has taken up water.',
  belowWet: 'Boils below what even a new fluid with water in it must: renew it (common practice).',
} as const;

/**
 * Where an owner's test of the boiling point lies against what a new fluid of its class must have. A frame
 * and no verdict.
 *
 * @param boilingC by a tester that boils a sample, C, 60 to 400
 * @throws RangeError outside of that
 * @example boilingTest('DOT 4', 190).where // "between"
 */
export function boilingTest(fluid: BrakeFluid, boilingC: number): BoilingTest {
  if (!(boilingC >= 60 && boilingC <= 400))
    throw new RangeError(
      `could not place the boiling point of ${boilingC} °C: it should be 60 to 400 °C; give what the tester shows in Celsius`,
    );
  const minima = NEW_FLUID_MINIMA[fluid];
  const where =
    boilingC >= minima.dryC ? 'asNew' : boilingC >= minima.wetC ? 'between' : 'belowWet';
  return { ...minima, where, reason: `${WORDS[where]} ${FRAME}` };
}
