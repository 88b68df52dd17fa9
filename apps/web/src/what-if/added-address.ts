import { type AddedUse, addedUse } from '@quartermark/engine/what-if';
import { LINES_MAX } from './added-fields.ts';

const COUNTS = ['sessions', 'launches', 'hours'] as const;
const DAY = /^\d{4}-\d{2}-\d{2}$/;

/**
 * A line as one value of an address.
 *
 * @example writeLine({ sort: 'circuit', start: '2026-06-14', use: { sessions: 6 } })
 * // "circuit 2026-06-14 sessions 6"
 */
export function writeLine({ sort, start, end, use }: AddedUse): string {
  const counts = COUNTS.flatMap((count) =>
    use[count] === undefined ? [] : [count, String(use[count])],
  );
  // a blank ends a word; inside a number one that does not break stands for it
  const distance = use.distance
    ? ['distance', use.distance.text.trim().replace(/\s+/g, '\u00a0'), use.distance.unit]
    : [];
  return [sort, start, ...(end === undefined ? [] : [end]), ...counts, ...distance].join(' ');
}

/** The line that `writeLine` made; null for anything else. */
export function readLine(text: string): AddedUse | null {
  const [sort, start, ...rest] = text.split(' ');
  const end = DAY.test(rest[0] ?? '') ? rest.shift() : undefined;
  const use: Record<string, unknown> = {};
  while (rest.length > 0) {
    const name = rest.shift() ?? '';
    const amount = rest.shift() ?? '';
    use[name] = name === 'distance' ? { text: amount, unit: rest.shift() } : numberOf(amount);
  }
  const line = { sort, start, ...(end === undefined ? {} : { end }), use };
  return addedUse.safeParse(line).data ?? null;
}

const numberOf = (text: string): number => (text === '' ? Number.NaN : Number(text));

type Address = Readonly<Record<string, string | string[] | undefined>>;

/** The lines that a page's address carries, and how many of them could not be read. */
export function readLines({ add = [] }: Address): { added: AddedUse[]; lost: number } {
  const texts = typeof add === 'string' ? [add] : add;
  const added = texts.flatMap((text) => readLine(text) ?? []).slice(0, LINES_MAX);
  return { added, lost: texts.length - added.length };
}

/** The lines as the query of an address, with its "?"; empty where there is none. */
export function writeLines(added: readonly AddedUse[]): string {
  const query = new URLSearchParams(added.map((line) => ['add', writeLine(line)]));
  return added.length === 0 ? '' : `?${query.toString()}`;
}
