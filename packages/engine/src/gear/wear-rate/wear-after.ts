import type { ComponentWear, PositionWear, WearUse } from './result.ts';
import { valueAfter } from './use-left.ts';
import { useIn } from './wear-basis.ts';

export { NO_USE } from './wear-basis.ts';

/** Null where the measurements give no rate: that is not known, and never good. */
export type WearAfter = Pick<PositionWear, 'what' | 'corner' | 'where' | 'unit'> & {
  likely: number | null;
  /** nine times in ten at least that much is left */
  cautious: number | null;
};

/**
 * What is left at each position after so much further use: for a circuit day, judge by `cautious`.
 *
 * Formula: `valueAfter()` of each position's line; sorts of use other than the basis are counted in by
 * common practice. Units: mm or g. Errors: RangeError for use below 0. Source: see `robustLine()`.
 * @example wearAfter(wear, { ...NO_USE, sessions: 5 })[0].cautious
 */
export function wearAfter(wear: ComponentWear, further: WearUse): WearAfter[] {
  const use = useIn(wear.basis, further);
  if (!(Math.min(...Object.values(further)) >= 0))
    throw new RangeError(`could not say what is left: ${JSON.stringify(further)}, from 0 upwards`);
  return wear.positions.map(({ what, corner, where, unit, line, now }) => {
    // a part that did nothing since it was measured, and will not, is as it was
    const after = line ? valueAfter(line, use) : use === 0 ? now : null;
    return {
      what,
      corner,
      where,
      unit,
      likely: after?.likely ?? null,
      cautious: after?.low ?? null,
    };
  });
}
