import { type EntryInput, entryInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { id } from '../asked.ts';

const isId = (text: string) => id.safeParse(text).success;

/** An entry whose ids are those of this house: UUIDs that the client made. */
export const entryForGarage = entryInput.superRefine((entry: EntryInput, ctx) => {
  const ask = (path: (string | number)[], text: string | undefined, what: string) => {
    if (text !== undefined && !isId(text))
      ctx.addIssue({ code: 'custom', path, message: `must be the id of ${what}, a UUID` });
  };
  ask(['id'], entry.id, 'the entry, made by the form');
  ask(['car'], entry.car, 'a car of this garage');
  if (entry.kind === 'service')
    entry.items.forEach((item, index) => {
      ask(['items', index], item, 'a service item of this car');
    });
  if (entry.car === undefined && entry.kind !== 'note')
    ctx.addIssue({ code: 'custom', path: ['car'], message: 'is missing; say which car it was' });
});

/** Questions that a person has answered with "yes, as I wrote it". */
const confirmed = z.array(z.enum(['odometerBackwards', 'orderUnclear'])).max(2);

export const answerFields = {
  confirmed: confirmed.default([]),
  /** true: it waited on a device without signal, so nobody is there to be asked */
  queued: z.boolean().default(false),
} as const;

export type Answers = { confirmed: z.output<typeof confirmed>; queued: boolean };
