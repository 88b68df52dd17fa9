import { countWord } from '@quartermark/engine/display';
import {
  type EventSort,
  type EventUse,
  readNumber,
  USE_MEASURES,
  type UseMeasure,
} from '@quartermark/engine/log';
import type { ProposedUse } from '@quartermark/engine/readiness';
import { plannedUseWords } from './planned-use-words.ts';

const ONE: Readonly<Record<EventSort, string>> = {
  meet: 'meet',
  roadTrip: 'road trip',
  circuit: 'circuit day',
  dragStrip: 'drag-strip day',
  autocross: 'autocross',
};
const MORE: Readonly<Record<EventSort, string>> = {
  meet: 'meets',
  roadTrip: 'road trips',
  circuit: 'circuit days',
  dragStrip: 'drag-strip days',
  autocross: 'autocrosses',
};

/**
 * What is proposed for an event, and where it comes from.
 *
 * @param days how many the event lasts
 * @param carName of the car it is proposed for
 * @example proposalWords(proposal, 'circuit', 2, 'Finch') // "Finch’s last three circuit days: 5 sessions a day."
 */
export function proposalWords(
  { use, from, events }: ProposedUse,
  sort: EventSort,
  days: number,
  carName: string,
): string {
  const amount = amountWords(use, days);
  if (from === 'practice') return `Common practice, no source: ${amount}.`;
  const whose = from === 'car' ? `${carName}’s` : 'This garage’s';
  const last =
    events.length === 1
      ? `last ${ONE[sort]}`
      : `last ${countWord(events.length).toLowerCase()} ${MORE[sort]}`;
  return `${whose} ${last}: ${amount}.`;
}

/** By the day where it divides, since that is how it was found; else all days together. */
function amountWords(use: EventUse, days: number): string {
  const daily = dailyOf(use, days);
  if (daily !== null) return `${plannedUseWords(daily)} a day`;
  return `${plannedUseWords(use)} in ${days} days`;
}

function dailyOf(use: EventUse, days: number): EventUse | null {
  const { distance, ...counts } = use;
  const each = Object.entries(counts).map(([name, value]) => [name, value / days] as const);
  const typed = distance === undefined ? null : readNumber(distance.text, true);
  const km = typed !== null && 'value' in typed ? typed.value / days : null;
  const whole = [...each.map(([, value]) => value), ...(km === null ? [] : [km])];
  if (!whole.every(Number.isInteger)) return null;
  return {
    ...Object.fromEntries(each),
    ...(distance && km !== null ? { distance: { text: String(km), unit: distance.unit } } : {}),
  };
}

/** The fields of a proposed use, as if they were typed. */
export function proposedTexts(use: EventUse, sort: EventSort): Partial<Record<UseMeasure, string>> {
  return Object.fromEntries(
    USE_MEASURES[sort].map((measure) => [
      measure,
      measure === 'distance' ? (use.distance?.text ?? '') : String(use[measure] ?? ''),
    ]),
  );
}
