import type { EntryView } from '@quartermark/api/client';
import { capital, entryLine, formatDay, listWords } from '@quartermark/engine/display';
import type { EventInput } from '@quartermark/engine/log';

type Car = { name: string; recorded: readonly EntryView[] };

/** The first line of a debrief: of which cars nothing is on record yet. */
export function debriefAnswer(event: EventInput, cars: readonly Car[], today: string): string {
  if (event.start > today)
    return `It begins on ${formatDay(event.start)}; what the cars did is written down from then on.`;
  if (cars.length === 0) return 'What did they do?';
  const open = cars.filter(({ recorded }) => recorded.length === 0);
  if (open.length === 0) return 'What every car did is on record.';
  return `Nothing is on record yet of ${listWords(open.map(({ name }) => name))}. What did ${
    open.length === 1 ? 'it' : 'they'
  } do?`;
}

/** A use or another entry in one line. @example partWords(entry) // "Circuit: 3 sessions" */
export function partWords(entry: EntryView['entry']): string {
  const { title, detail } = entryLine(entry);
  return detail === '' ? title : `${title}: ${detail}`;
}

/** What is on record of a car: a line each, the day said where there are several. */
export function recordedWords({ entry }: EntryView, days: number): string {
  return days > 1
    ? `${formatDay(entry.on)}, ${lower(partWords(entry))}`
    : capital(partWords(entry));
}

const lower = (words: string) => `${words.charAt(0).toLowerCase()}${words.slice(1)}`;
