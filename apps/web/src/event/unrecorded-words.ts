import { formatDay, listWords } from '@quartermark/engine/display';
import type { EventInput } from '@quartermark/engine/log';

type Over = Pick<EventInput, 'name' | 'start' | 'end'>;

/**
 * The question of an event that is over, of cars of which nothing is on record.
 *
 * @param today civil date; a year that is not its own is said
 * @example unrecordedWords(event, ['Finch'], '2026-06-15') // "Circuit day, 6 June: nothing recorded for Finch. What did it do?"
 */
export function unrecordedWords(event: Over, names: readonly string[], today: string): string {
  const asked = names.length === 1 ? 'What did it do?' : 'What did they do?';
  return `${event.name}, ${daysWords(event, today)}: nothing recorded for ${listWords(names)}. ${asked}`;
}

function daysWords({ start, end = start }: Over, today: string): string {
  const said = (day: string) => {
    const words = formatDay(day);
    return day.slice(0, 4) === today.slice(0, 4) ? words.slice(0, -5) : words;
  };
  return start === end ? said(start) : `${said(start)} to ${said(end)}`;
}
