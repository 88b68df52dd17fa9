import { daysBetween } from '@quartermark/engine/calendar';

/** "{20 June ±4}", "{220 ±10}": what may be off by so much, a day or a figure. */
const MARKER = /\{([^}]+?) ±([\d.]+)\}/g;
const DAY_OR_FIGURE = '(\\d{1,2} [A-Z][a-z]+(?: \\d{4})?|\\d[\\d,]*(?:\\.\\d+)?)';
const MONTHS =
  'January February March April May June July August September October November December'.split(
    ' ',
  );

function dateOf(words: string, year: string): string | null {
  const parts = /^(\d{1,2}) ([A-Z][a-z]+)(?: (\d{4}))?$/.exec(words);
  const month = MONTHS.indexOf(parts?.[2] ?? '') + 1;
  if (!parts || month === 0) return null;
  return `${parts[3] ?? year}-${String(month).padStart(2, '0')}-${parts[1]?.padStart(2, '0')}`;
}

function off(said: string, wanted: string, year: string): number {
  const [day, other] = [dateOf(said, year), dateOf(wanted, year)];
  if (day !== null && other !== null) return Math.abs(daysBetween(other, day));
  if (day !== null || other !== null) return Number.POSITIVE_INFINITY;
  return Math.abs(Number(said.replace(',', '')) - Number(wanted.replace(',', '')));
}

/**
 * What is wrong with a sentence, in words; null where it is as written, every day and figure in its
 * marker as near as the marker allows.
 *
 * @param year of days that are said without one
 */
export function wrongWith(said: string, written: string, year: string): string | null {
  const markers = [...written.matchAll(MARKER)];
  const escaped = written
    .split(MARKER)
    .filter((_, at) => at % 3 === 0)
    .map((text) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  const found = new RegExp(`^${escaped.join(DAY_OR_FIGURE)}$`).exec(said);
  if (!found) return `"${said}" is not "${written}"`;
  const wrong = markers.flatMap(([, wanted = '', most = ''], at) => {
    const one = found[at + 1] ?? '';
    return off(one, wanted, year) <= Number(most) ? [] : [`${one} is not ${wanted} ±${most}`];
  });
  return wrong.length === 0 ? null : `${wrong.join(', ')} in "${said}"`;
}
