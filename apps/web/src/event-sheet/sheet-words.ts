import type { EventPage } from '@quartermark/api/client';
import { formatDay } from '@quartermark/engine/display';
import { momentWords } from '../garage/moment-words.ts';

/** What stands on every page that is printed. */
export const CERTIFIES_NOTHING =
  'By the log of its people alone: it advises and certifies nothing. The maker’s manual, the organiser and whoever looks at the car decide.';

/** When it was worked out, and until when it holds. @example stampWords(page) // "Worked out 15 June 2026, 10:00 (Europe/London). Void after any entry." */
export function stampWords({ at, garage }: Pick<EventPage, 'at' | 'garage'>): string {
  return `Worked out ${momentWords(at, garage.zone)}. Void after any entry.`;
}

/** What is on the sheet: its first line on screen. @example sheetAnswer(2) // "2 cars, a page each for whoever looks them over, and a page of the work and what to take along." */
export function sheetAnswer(cars: number): string {
  const rest = 'a page of the work and what to take along';
  if (cars === 0) return 'No car is named for this event, so there is no page for an inspector.';
  return cars === 1
    ? `A page for whoever looks the car over, and ${rest}.`
    : `${cars} cars, a page each for whoever looks them over, and ${rest}.`;
}

/** Whose rules are asked, and of which edition. */
export function rulesWords({ own, garage, usual }: EventPage['requirements']): string {
  const { rules } = own ?? garage ?? usual;
  return rules
    ? `${rules.name}, edition of ${formatDay(rules.edition)}`
    : 'No organiser’s rules named: what this garage asks, or common practice';
}
