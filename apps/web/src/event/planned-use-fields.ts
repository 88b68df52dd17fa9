import {
  type Distance,
  distance as distanceSchema,
  type EventInput,
  type EventSort,
  type EventUse,
  eventDays,
  USE_MEASURES,
  type UseMeasure,
  usualUse,
} from '@quartermark/engine/log';
import { type Problems, readField } from '../items/limit-fields.ts';

type Count = Exclude<UseMeasure, 'distance'>;

/** What the form holds of the use at an event. An amount is null until it was typed: as is usual. */
export type UseFields = Record<UseMeasure, string | null> & { unit: Distance['unit'] };

/** Of a new event. @param unit in which distances are proposed */
export function usualUseFields(unit: Distance['unit']): UseFields {
  return { sessions: null, launches: null, hours: null, distance: null, unit };
}

/** Of a stored event: what it does not say stays empty, however usual it would be. */
export function plannedUseFields({ use }: EventInput, unit: Distance['unit']): UseFields {
  const text = (amount: number | undefined) => (amount === undefined ? '' : String(amount));
  return {
    sessions: text(use?.sessions),
    launches: text(use?.launches),
    hours: text(use?.hours),
    distance: use?.distance?.text ?? '',
    unit: use?.distance?.unit ?? unit,
  };
}

type Shown = { sort: EventSort; start: string; end: string; use: UseFields };

/** What stands in the field of a measure: what was typed, else what is usual for the sort and the days. */
export function shownAmount({ sort, start, end, use }: Shown, measure: UseMeasure): string {
  const typed = use[measure];
  if (typed !== null) return typed;
  const dated = start !== '' && end > start;
  const usual = usualUse(sort, dated ? eventDays({ start, end }) : 1, use.unit);
  return measure === 'distance' ? (usual.distance?.text ?? '') : String(usual[measure] ?? '');
}

/** The use as the server takes it; what cannot be read is added to `problems`. */
export function readUse(shown: Shown, problems: Problems): EventUse | undefined {
  const use: EventUse = {};
  for (const measure of USE_MEASURES[shown.sort]) {
    const text = shownAmount(shown, measure);
    if (text.trim() === '') continue;
    if (measure === 'distance') use.distance = readDistance(text, shown.use.unit, problems);
    else use[measure] = readCount(text, measure, problems);
  }
  return Object.keys(use).length === 0 ? undefined : use;
}

function readDistance(text: string, unit: Distance['unit'], problems: Problems): Distance {
  const typed = { text, unit };
  const wrong = distanceSchema.safeParse(typed).error?.issues[0];
  if (wrong) problems['event.use.distance.text'] = capital(wrong.message);
  return typed;
}

const MOST: Readonly<Record<Count, number>> = { sessions: 300, launches: 600, hours: 240 };

function readCount(text: string, measure: Count, problems: Problems): number {
  const path = `event.use.${measure}`;
  const value = readField(text, path, problems, false);
  if (value < 0 || value > MOST[measure])
    problems[path] = `${capital(measure)}: ${text.trim()} is outside 0 to ${MOST[measure]}.`;
  return value;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
