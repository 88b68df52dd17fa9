import { z } from 'zod';

/**
 * What a paged question carries. `direction` is sent by the client's cache beside the cursor; pages here
 * run one way only, so it is accepted and has no say.
 */
export const pageFields = {
  cursor: z.string().max(200).nullish(),
  direction: z.literal('forward').optional(),
} as const;
