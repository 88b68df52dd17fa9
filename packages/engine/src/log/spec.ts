import { z } from 'zod';
import { shortText } from './common.ts';

export const SPEC_GROUPS = ['fluids', 'torques', 'pressures', 'jacking', 'other'] as const;
export type SpecGroup = (typeof SPEC_GROUPS)[number];

/** One line of a car's spec sheet, as the manual or the owner gives it. */
export const specLine = z.strictObject({
  group: z.enum(SPEC_GROUPS),
  what: shortText,
  /** as written, with its unit: "5.5 L", "110 N·m, star order", "2.1 bar cold" */
  value: shortText,
  /** the page of the manual, or whose value it is; without one it is shown as unverified */
  source: shortText.optional(),
});
export type SpecLine = z.infer<typeof specLine>;

export const specSheet = z.strictObject({ lines: z.array(specLine).max(200) });
export type SpecSheet = z.infer<typeof specSheet>;
