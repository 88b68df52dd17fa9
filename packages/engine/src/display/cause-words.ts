import type { IncidentSort } from '../log/common.ts';
import type { ItemResult, Trigger } from '../wear/result.ts';
import { formatDay } from './format-day.ts';
import { capital } from './grammar.ts';

/** What happened, to begin a line with. */
export const INCIDENT_WORDS: Readonly<Record<IncidentSort, string>> = {
  off: 'Off the track',
  contact: 'Contact',
  overRev: 'Engine over-revved',
  softPedal: 'Soft brake pedal',
  overheating: 'Overheating',
  warningLamp: 'Warning lamp',
  lowOilPressure: 'Low oil pressure',
};

/** What made an item due at once, to go on in a line. @example "soft brake pedal on 13 June 2026" */
export function causeWords({ code, on }: Pick<Trigger, 'code' | 'on'>): string {
  const day = formatDay(on);
  if (code === 'oilHot') return `oil hotter than its limit on ${day}`;
  if (code === 'wheelsOff') return `wheels off on ${day}, not torqued on record since`;
  return `${INCIDENT_WORDS[code].toLowerCase()} on ${day}`;
}

/**
 * Why an item is due, or over, whatever its limits say; null where its limits decide.
 *
 * @example dueAtOnceSentence(result) // "Due at once: soft brake pedal on 13 June 2026. It stays due until it is done after that."
 */
export function dueAtOnceSentence({ reasonCode, trigger, service }: ItemResult): string | null {
  if (reasonCode === 'trigger' && trigger)
    return `Due at once: ${causeWords(trigger)}. It stays due until it is done after that.`;
  if (reasonCode === 'asked') return 'You said: treat as due now. It stays due until it is done.';
  if (reasonCode === 'doneOnce') {
    const when = service === undefined ? '' : ` on ${formatDay(service)}`;
    return `${capital(`it was to be done once, and was${when}`)}. Its limits no longer count.`;
  }
  return null;
}
