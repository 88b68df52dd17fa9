import type { LetterWish } from '@quartermark/api/client';
import { weekdayAhead } from '@quartermark/engine/display';
import { z } from 'zod';
import type { VersionLine } from '../../forms/version-rows.ts';
import { weekdayName } from '../letters-words.ts';

/** What the form of a member's wish holds. */
export type WishFields = {
  baseRevision: number;
  rhythm: 'night' | 'week';
  /** 1 Monday to 7 Sunday, as text */
  on: string;
  onlyIfNew: boolean;
  beforeEvents: boolean;
  /** empty: not paused */
  pausedUntil: string;
  mail: 'mail' | 'here';
  cars: 'all' | 'some';
  some: string[];
};

/** Whoever turns to once a week has a weekend's worth of notice. Common practice, no source. */
const USUAL_WEEKDAY = 4;

export function wishFields(wish: LetterWish, revision: number): WishFields {
  const { rhythm, onlyIfNew, beforeEvents, pausedUntil, mail, cars } = wish;
  return {
    baseRevision: revision,
    rhythm: rhythm.every,
    on: String(rhythm.every === 'week' ? rhythm.on : USUAL_WEEKDAY),
    onlyIfNew,
    beforeEvents,
    pausedUntil: pausedUntil ?? '',
    mail: mail ? 'mail' : 'here',
    cars: cars === 'all' ? 'all' : 'some',
    some: cars === 'all' ? [] : [...cars],
  };
}

/** What was typed as a wish, or what is wrong by the path the server would name. */
export function readWish(
  fields: WishFields,
): { body: LetterWish } | { problems: Record<string, string> } {
  const { rhythm, on, onlyIfNew, beforeEvents, pausedUntil, mail, cars, some } = fields;
  if (cars === 'some' && some.length === 0)
    return {
      problems: {
        'wish.cars':
          'Tick at least one car, or choose all cars; to hear of none, pause the letters.',
      },
    };
  return {
    body: {
      rhythm: rhythm === 'night' ? { every: 'night' } : { every: 'week', on: Number(on) },
      onlyIfNew,
      beforeEvents,
      pausedUntil: pausedUntil === '' ? null : pausedUntil,
      mail: mail === 'mail',
      cars: cars === 'all' ? 'all' : some,
    },
  };
}

/** A wish as somebody else saved it meanwhile. */
export const wishSchema: z.ZodType<LetterWish> = z.object({
  rhythm: z.union([
    z.object({ every: z.literal('night') }),
    z.object({ every: z.literal('week'), on: z.number() }),
  ]),
  onlyIfNew: z.boolean(),
  beforeEvents: z.boolean(),
  pausedUntil: z.string().nullable(),
  mail: z.boolean(),
  cars: z.union([z.literal('all'), z.array(z.string())]),
});

/** A wish in words, a line for each thing the form can change. */
export function wishLines(wish: LetterWish, nameOf: (car: string) => string): VersionLine[] {
  const { rhythm, onlyIfNew, beforeEvents, pausedUntil, mail, cars } = wish;
  return [
    {
      label: 'Rhythm',
      words: rhythm.every === 'night' ? 'Every night' : `Every ${weekdayName(rhythm.on)}`,
    },
    { label: 'Only if something is new', words: onlyIfNew ? 'Yes' : 'No' },
    { label: 'Thursday before an event weekend', words: beforeEvents ? 'Yes' : 'No' },
    {
      label: 'Paused until',
      words: pausedUntil === null ? 'Not paused' : weekdayAhead(pausedUntil, { asOf: null }),
    },
    { label: 'By mail', words: mail ? 'Yes' : 'Only here' },
    { label: 'Cars', words: cars === 'all' ? 'All' : cars.map(nameOf).join(', ') },
  ];
}

type Answer = {
  wish: LetterWish;
  /** of the garage */
  today: string;
  /** when letters leave, "06:00" */
  hour: string;
  /** the member's own mailbox; null: letters do not come by mail */
  to: string | null;
};

/** What comes as things stand, in a sentence. */
export function wishAnswer({ wish, today, hour, to }: Answer): string {
  const { rhythm, onlyIfNew, pausedUntil } = wish;
  if (pausedUntil !== null && pausedUntil >= today)
    return `Your letters are paused until ${weekdayAhead(pausedUntil, { asOf: today })}.`;
  const when = rhythm.every === 'night' ? 'each day' : `each ${weekdayName(rhythm.on)}`;
  const only = onlyIfNew ? ', if something is new' : '';
  const where = to === null ? 'here, in the garage' : `here and at ${to}`;
  return `A letter ${when} at ${hour}${only}, ${where}.`;
}
