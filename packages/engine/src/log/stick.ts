import { z } from 'zod';

/** Fractions of the span (0 MIN, 1 MAX) that can be read on a stick; beyond them a number was mistyped. */
export const STICK_MIN = -0.5;
export const STICK_MAX = 1.6;

/** True of a fraction of the span that can be read on a stick; false of what is no number. */
export function isOnStick(fraction: number): boolean {
  return fraction >= STICK_MIN && fraction <= STICK_MAX;
}

/** The level on a stick: as people read it. A fraction of the span is 0 at MIN and 1 at MAX. */
export const stickLevel = z.discriminatedUnion('how', [
  z.strictObject({ how: z.literal('none') }),
  z.strictObject({
    how: z.literal('fraction'),
    fraction: z
      .number()
      .min(STICK_MIN, `level: below ${STICK_MIN} is no level on a stick; use "none on the stick"`)
      .max(STICK_MAX, `level: above ${STICK_MAX} is no level on a stick; use "over MAX"`),
    /** distance between the marks the eye can tell, in spans (zones 0.25) */
    step: z.number().positive().max(1).optional(),
  }),
  /** litres from MAX, up positive */
  z.strictObject({ how: z.literal('fromMax'), litres: z.number().min(-20).max(5) }),
  z.strictObject({ how: z.literal('over') }),
]);
