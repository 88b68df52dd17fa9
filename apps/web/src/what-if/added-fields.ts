import { addDays } from '@quartermark/engine/calendar';
import { HORIZON_DAYS } from '@quartermark/engine/display';
import {
  type Distance,
  type EventSort,
  USE_MEASURES,
  type UseMeasure,
} from '@quartermark/engine/log';
import { type AddedUse, addedUse } from '@quartermark/engine/what-if';
import {
  readUse,
  shownAmount,
  type UseFields,
  usualUseFields,
} from '../event/planned-use-fields.ts';
import type { Problems } from '../items/limit-fields.ts';

/** One line of the form: something the car might do, everything as typed. */
export type AddedLine = { sort: EventSort; start: string; end: string; use: UseFields };
export type AddedFields = { lines: AddedLine[] };

/** As many lines as the server takes. */
export const LINES_MAX = 20;

/** @param unit in which a distance is proposed */
export function emptyLine(unit: Distance['unit']): AddedLine {
  return { sort: 'circuit', start: '', end: '', use: usualUseFields(unit) };
}

/** A line of the address as the form shows it. */
export function lineOf(
  { sort, start, end = '', use }: AddedUse,
  unit: Distance['unit'],
): AddedLine {
  const text = (amount: number | undefined) => (amount === undefined ? '' : String(amount));
  return {
    sort,
    start,
    end,
    use: {
      sessions: text(use.sessions),
      launches: text(use.launches),
      hours: text(use.hours),
      distance: use.distance?.text ?? '',
      unit: use.distance?.unit ?? unit,
    },
  };
}

/** What a line asks for: the usual measure of its sort and a distance; hours where it has some. */
export function measuresOf(line: AddedLine): UseMeasure[] {
  return USE_MEASURES[line.sort].filter(
    (measure) => measure !== 'hours' || shownAmount(line, measure) !== '',
  );
}

/**
 * The lines as the server takes them, or what is wrong by the path it would name.
 *
 * @param today civil date of the garage
 */
export function readLines(
  { lines }: AddedFields,
  today: string,
): { added: AddedUse[] } | { problems: Problems } {
  const problems: Problems = {};
  const added = lines.map((line, at) => readLine(line, `added.${at}`, today, problems));
  if (Object.keys(problems).length > 0) return { problems };
  return { added: added.flatMap((line) => line ?? []) };
}

function readLine(
  line: AddedLine,
  path: string,
  today: string,
  problems: Problems,
): AddedUse | null {
  const { sort, start, end } = line;
  const own: Problems = {};
  const use = readUse(line, own);
  for (const [field, words] of Object.entries(own)) problems[field.replace(/^event/, path)] = words;
  const last = addDays(today, HORIZON_DAYS);
  const tooLate = `No forecast reaches beyond three years; choose ${last} or an earlier day.`;
  if (start === '') problems[`${path}.start`] = 'Choose the day it begins.';
  else if (start < today)
    problems[`${path}.start`] = 'This day has passed; choose today or a later day.';
  else if (start > last) problems[`${path}.start`] = tooLate;
  if (end !== '' && start !== '' && end < start)
    problems[`${path}.end`] = 'The last day is before the first; swap them or leave it empty.';
  else if (end > last) problems[`${path}.end`] = tooLate;
  if (Object.keys(problems).some((field) => field.startsWith(`${path}.`))) return null;
  const read = addedUse.safeParse({ sort, start, ...(end > start && { end }), use: use ?? {} });
  if (read.success) return read.data;
  const [main = 'distance'] = USE_MEASURES[sort];
  problems[`${path}.use.${main}`] = 'Say how much; without an amount there is nothing to add.';
  return null;
}
