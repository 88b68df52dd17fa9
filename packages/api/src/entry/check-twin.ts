import { entryLine } from '@quartermark/engine/display';
import { type EntryInput, looksTheSame } from '@quartermark/engine/log';
import { refuse } from '../refused.ts';

/**
 * The same use is on record already, as far as day, kind and amounts tell. Both would count.
 *
 * @param sameDay other entries of the car on that day
 * @throws Refused `looksTheSame`
 */
export function checkTwin(entry: EntryInput, sameDay: readonly EntryInput[]): void {
  const twin = sameDay.find((other) => looksTheSame(entry, other));
  if (!twin) return;
  const { title, detail } = entryLine(twin);
  const at = twin.time === undefined ? '' : ` at ${twin.time}`;
  throw refuse(
    'looksTheSame',
    'entry.on',
    `This looks the same as what is recorded of that day${at}: ${title}, ${detail}. If it is the same, leave it; if it happened twice, save it as a second one.`,
  );
}
