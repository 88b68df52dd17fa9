import { type EntryInput, type EntryKind, entryInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { id } from '../asked.ts';

const isId = (text: string) => id.safeParse(text).success;

/** What only a car does, or what is done to a car alone; taking a part off may leave the car out. */
const NEEDS_A_CAR: readonly EntryKind[] = [
  'odometer',
  'fuel',
  'oilCheck',
  'oilTopUp',
  'oilChange',
  'drive',
  'session',
  'strip',
  'wheels',
  'incident',
  'layUp',
  'wakeUp',
  'meterReplaced',
];

/** The component, piece of equipment or person an entry is about, if any. */
export function aboutGear(entry: EntryInput): string | undefined {
  if (entry.gear !== undefined) return entry.gear;
  return entry.kind === 'fit' || entry.kind === 'measure' ? entry.component : undefined;
}

/** An entry whose ids are those of this house: UUIDs that the client made. */
export const entryForGarage = entryInput.superRefine((entry: EntryInput, ctx) => {
  const ask = (path: (string | number)[], text: string | undefined, what: string) => {
    if (text !== undefined && !isId(text))
      ctx.addIssue({ code: 'custom', path, message: `must be the id of ${what}, a UUID` });
  };
  ask(['id'], entry.id, 'the entry, made by the form');
  ask(['car'], entry.car, 'a car of this garage');
  ask(['gear'], entry.gear, 'a set, tool or person of this garage');
  if (entry.kind === 'fit' || entry.kind === 'measure')
    ask(['component'], entry.component, 'a component of this garage');
  if (entry.kind === 'session') ask(['tyreSet'], entry.tyreSet, 'a tyre set of this garage');
  if (entry.kind === 'service')
    entry.items.forEach((item, index) => {
      ask(['items', index], item, 'a service item of this car');
    });
  for (const [index, photo] of (entry.photos ?? []).entries())
    ask(['photos', index], photo, 'a photo of this garage');
  if (entry.car === undefined && aboutGear(entry) === undefined && entry.kind !== 'note')
    ctx.addIssue({ code: 'custom', path: ['car'], message: 'is missing; say which car it was' });
  if (entry.car === undefined && NEEDS_A_CAR.includes(entry.kind))
    ctx.addIssue({ code: 'custom', path: ['car'], message: 'is missing; only a car does this' });
});

/** Questions that a person has answered with "yes, as I wrote it". */
const confirmed = z.array(z.enum(['odometerBackwards', 'orderUnclear'])).max(2);

export const answerFields = {
  confirmed: confirmed.default([]),
  /** true: it waited on a device without signal, so nobody is there to be asked */
  queued: z.boolean().default(false),
} as const;

export type Answers = { confirmed: z.output<typeof confirmed>; queued: boolean };
