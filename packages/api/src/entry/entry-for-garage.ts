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

type Named = { path: (string | number)[]; id: string | undefined; what: string };

/** Every id an entry names, with what it is the id of. */
function named(entry: EntryInput): Named[] {
  const one = (field: string, id: string | undefined, what: string): Named => ({
    path: [field],
    id,
    what,
  });
  const many = (field: string, ids: readonly string[] | undefined, what: string): Named[] =>
    (ids ?? []).map((id, index) => ({ path: [field, index], id, what }));
  return [
    one('id', entry.id, 'the entry, made by the form'),
    one('car', entry.car, 'a car of this garage'),
    one('gear', entry.gear, 'a set, tool or person of this garage'),
    ...many('photos', entry.photos, 'a photo of this garage'),
    ...(entry.kind === 'fit' || entry.kind === 'measure'
      ? [one('component', entry.component, 'a component of this garage')]
      : []),
    ...(entry.kind === 'session'
      ? [
          one('tyreSet', entry.tyreSet, 'a tyre set of this garage'),
          one('event', entry.event, 'an event of this garage'),
        ]
      : []),
    ...(entry.kind === 'finding'
      ? [one('resolvedBy', entry.resolvedBy, 'the entry that dealt with it')]
      : []),
    ...(entry.kind === 'service' ? many('items', entry.items, 'a service item of this car') : []),
  ];
}

/** An entry whose ids are those of this house: UUIDs that the client made. */
export const entryForGarage = entryInput.superRefine((entry: EntryInput, ctx) => {
  const wrong = (path: (string | number)[], message: string) =>
    ctx.addIssue({ code: 'custom', path, message });
  for (const { path, id: text, what } of named(entry))
    if (text !== undefined && !isId(text)) wrong(path, `must be the id of ${what}, a UUID`);
  if (entry.kind === 'fit' || entry.kind === 'measure') {
    const { gear, component } = entry;
    // an entry has one place among the pieces; two would hide it from one of them
    if (gear !== undefined && component !== undefined && gear !== component)
      wrong(['gear'], 'names another piece than the component; leave it out');
  }
  if (entry.car === undefined && aboutGear(entry) === undefined && entry.kind !== 'note')
    wrong(['car'], 'is missing; say which car it was');
  if (entry.car === undefined && NEEDS_A_CAR.includes(entry.kind))
    wrong(['car'], 'is missing; only a car does this');
});

/** Questions that a person has answered with "yes, as I wrote it". */
const confirmed = z.array(z.enum(['odometerBackwards', 'orderUnclear', 'looksTheSame'])).max(3);

export const answerFields = {
  confirmed: confirmed.default([]),
  /** true: it waited on a device without signal, so nobody is there to be asked */
  queued: z.boolean().default(false),
} as const;

export type Answers = { confirmed: z.output<typeof confirmed>; queued: boolean };
