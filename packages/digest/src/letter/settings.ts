import { weekday } from '@quartermark/engine/calendar';

/** What a member wants of the letters of a garage. */
export type DigestSettings = {
  rhythm:
    | { every: 'night' }
    /** 1 Monday to 7 Sunday */
    | { every: 'week'; on: number };
  /** no letter where nothing in it is new; weekly reminders alone are not new */
  onlyIfNew: boolean;
  /** a letter on the Thursday before an event weekend, whatever the rhythm */
  beforeEvents: boolean;
  /** no letter up to this civil date, itself included; null: none is held back */
  pausedUntil: string | null;
};

/** What a member wants of the letters of a garage, and where they come. */
export type LetterWish = DigestSettings & {
  /** whether they come by mail; they lie in the garage in any case */
  mail: boolean;
  /** of which cars they speak */
  cars: 'all' | string[];
};

/** Every night, silent when nothing is new. */
export const SETTINGS_USUAL: DigestSettings = {
  rhythm: { every: 'night' },
  onlyIfNew: true,
  beforeEvents: true,
  pausedUntil: null,
};

/** What a member wants who said nothing. */
export const WISH_USUAL: LetterWish = { ...SETTINGS_USUAL, mail: true, cars: 'all' };

const THURSDAY = 4;

export const isThursday = (today: string) => weekday(today) === THURSDAY;

/** Whether the member's rhythm has a letter on a day, before it is known what would be in it. */
export function isLetterDay({ rhythm, pausedUntil }: DigestSettings, today: string): boolean {
  if (isPaused(pausedUntil, today)) return false;
  return rhythm.every === 'night' || rhythm.on === weekday(today);
}

export const isPaused = (until: string | null, today: string) => until !== null && today <= until;
