import { formatCount, formatDistance, formatHours } from '@quartermark/engine/display';
import { deriveAmounts } from '@quartermark/engine/history';
import { distanceKm, type EventInput, type EventUse, USE_OF_SORT } from '@quartermark/engine/log';

/** How likely it is that the cars go, in words. */
export const ATTENDANCE = [
  { value: '1', words: 'Certain' },
  { value: '0.9', words: 'Likely', hint: 'nine times in ten' },
  { value: '0.5', words: 'Perhaps', hint: 'one time in two' },
] as const;

/** @example attendWords(0.9) // "likely, nine times in ten" */
export function attendWords(attend: number): string {
  const known = ATTENDANCE.find(({ value }) => Number(value) === attend);
  if (!known) return `about ${Math.round(attend * 100)} times in a hundred`;
  const word = known.words.toLowerCase();
  return 'hint' in known ? `${word}, ${known.hint}` : word;
}

/** What was said a car is to do there. @example plannedUseWords({ sessions: 4 }) // "4 sessions" */
export function plannedUseWords(use: EventUse | undefined): string {
  const parts = [
    use?.sessions === undefined ? '' : formatCount(use.sessions, 'session'),
    use?.launches === undefined ? '' : formatCount(use.launches, 'launch', 'launches'),
    use?.distance === undefined ? '' : `${use.distance.text} ${use.distance.unit}`,
    use?.hours === undefined ? '' : formatHours(use.hours),
  ].filter((part) => part !== '');
  return parts.length === 0 ? 'Not said' : parts.join(', ');
}

/** What follows from the amounts that were said for those that were not. */
function derivedWords({ sort, use }: Pick<EventInput, 'sort' | 'use'>, unit: 'km' | 'mi'): string {
  if (use === undefined) return '';
  const amounts = deriveAmounts({
    useClass: USE_OF_SORT[sort],
    distanceKm: use.distance === undefined ? null : distanceKm(use.distance),
    hours: use.hours ?? null,
    sessions: use.sessions ?? null,
    launches: use.launches ?? null,
  });
  const parts = [
    use.distance === undefined && amounts.distanceKm > 0
      ? formatDistance(amounts.distanceKm, unit)
      : '',
    use.hours === undefined && amounts.hours > 0 ? formatHours(amounts.hours) : '',
  ].filter((part) => part !== '');
  return parts.length === 0 ? '' : ` (from that follow about ${parts.join(' and ')})`;
}

type Counting = Pick<EventInput, 'sort' | 'cars' | 'use' | 'attend'>;

/** True where an event counts ahead for the cars it names. */
export function countsAhead({ cars, use }: Pick<EventInput, 'cars' | 'use'>): boolean {
  if (cars.length === 0 || use === undefined) return false;
  const { distance, hours = 0, sessions = 0, launches = 0 } = use;
  return hours + sessions + launches > 0 || (distance !== undefined && distanceKm(distance) > 0);
}

/** What of an event counts ahead for the dates of its cars: a sentence for its form. */
export function countedSentence(event: Counting, unit: 'km' | 'mi'): string {
  const { cars, use, attend } = event;
  if (cars.length === 0) return 'Name the cars, so that it counts for them.';
  if (!countsAhead(event))
    return 'Nothing is counted ahead: say what each car does there, so that its dates know of it.';
  const whom = cars.length === 1 ? 'for the car that goes' : 'for each car that goes';
  return `Counted ahead ${whom}: ${plannedUseWords(use)}${derivedWords(event, unit)}; ${attendWords(attend)}.`;
}

/** The same as a short part of a line. */
export function countedWords(event: Counting): string {
  return countsAhead(event)
    ? `Counts ahead for each: ${plannedUseWords(event.use)}, ${attendWords(event.attend)}`
    : 'Counts for no car’s dates';
}
