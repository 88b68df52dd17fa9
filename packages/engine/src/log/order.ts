import { z } from 'zod';
import { civilDate, recordId, shortText } from './common.ts';

/** Parts for an item that were ordered: when, for when, and whether they have come. */
export const orderFields = {
  /** civil date on which it was ordered */
  on: civilDate,
  expected: civilDate.optional(),
  arrived: civilDate.optional(),
  /** in the owner's own words */
  what: shortText.optional(),
  from: shortText.optional(),
} as const;

const notBefore = (field: 'expected' | 'arrived') => ({
  path: [field],
  error: `${field}: this day is before the day of the order; correct one of the two`,
});

export const orderInput = z
  .strictObject(orderFields)
  .refine(({ on, expected }) => expected === undefined || expected >= on, notBefore('expected'))
  .refine(({ on, arrived }) => arrived === undefined || arrived >= on, notBefore('arrived'));
export type OrderInput = z.infer<typeof orderInput>;
export type OrderDraft = z.input<typeof orderInput>;

/** An order as a book holds it. */
export const bookOrder = z.strictObject({ id: recordId, item: recordId, ...orderFields });
export type BookOrder = z.infer<typeof bookOrder>;
