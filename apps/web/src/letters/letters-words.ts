import { countWord, weekdayAhead } from '@quartermark/engine/display';

/** The question of the page, answered. @example lettersAnswer(2, true) // "Two letters you have not read." */
export function lettersAnswer(unread: number, any: boolean): string {
  if (!any) return 'No letter has come yet.';
  if (unread === 0) return 'You have read every letter.';
  return unread === 1
    ? 'One letter you have not read.'
    : `${countWord(unread)} letters you have not read.`;
}

/** How much a letter says. @example linesWords(1) // "1 line" */
export const linesWords = (lines: number) =>
  lines === 0 ? 'Nothing new' : lines === 1 ? '1 line' : `${lines} lines`;

/** What found no room is not lost. @example restWords({ count: 1, text: 'And one more thing' }) // "And one more thing: it comes in the next letter." */
export const restWords = ({ count, text }: { count: number; text: string }) =>
  `${text}: ${count === 1 ? 'it comes in the next letter' : 'they come in the next letters'}.`;

/** A letter that makes up for nights nobody composed in; null where none was missed. */
export function missedWords(missed: number): string | null {
  if (missed === 0) return null;
  const nights = missed === 1 ? 'the night before it' : `the ${missed} nights before it`;
  return `The garage was not running in ${nights}: this letter makes up for it.`;
}

/** ISO weekdays, 1 Monday to 7 Sunday. */
export const WEEKDAYS: readonly string[] = [
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
  'Sunday',
];

/** @param on 1 Monday to 7 Sunday */
export const weekdayName = (on: number) => WEEKDAYS[on - 1] ?? '';

type NoLetter = {
  why: 'silent' | 'paused' | 'notTonight';
  wish: { rhythm: { every: 'night' } | { every: 'week'; on: number }; pausedUntil: string | null };
  /** of the letter that does not come */
  date: string;
};

/** Why no letter comes, and what would have one come. */
export function noLetterWords({ why, wish, date }: NoLetter): string {
  switch (why) {
    case 'silent':
      return 'No letter so far: nothing is new, and you want one only if something is.';
    case 'paused': {
      const until = wish.pausedUntil;
      const words = until === null ? '' : ` until ${weekdayAhead(until, { asOf: date })}`;
      return `No letter: yours are paused${words}.`;
    }
    case 'notTonight':
      return wish.rhythm.every === 'week'
        ? `No letter tonight: yours come for ${weekdayName(wish.rhythm.on)}s.`
        : 'No letter tonight.';
  }
}

/** @param minute of the day, 0 to 1439 @example hourWords(360) // "06:00" */
export const hourWords = (minute: number) =>
  `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
