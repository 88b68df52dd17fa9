import type { EntryKind } from '@quartermark/engine/log';
import { and, desc, eq, inArray, isNull, type SQL, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { entry } from '../schema.ts';
import type { EntryRow } from './read.ts';

/** The last row of a page: where the next one begins. */
export type HistoryPlace = { on: string; recorded: number };

export type HistoryQuestion = {
  garageId: string;
  /** left out: the whole garage */
  carId?: string;
  /** about this component, piece of equipment or person */
  gearId?: string;
  /** any of these */
  kinds?: readonly EntryKind[];
  /** words that must occur in what was typed, whatever their case */
  text?: string;
  /** removed entries too */
  tombstones?: boolean;
  after?: HistoryPlace | null;
  limit: number;
};

/** One page of the record, newest day first, then the last recorded first. */
export async function historyPage(
  tx: Tx,
  question: HistoryQuestion,
): Promise<{ rows: EntryRow[]; next: HistoryPlace | null }> {
  const { garageId, carId, gearId, kinds, text, tombstones, after, limit } = question;
  const rows = await tx
    .select()
    .from(entry)
    .where(
      and(
        eq(entry.garageId, garageId),
        carId === undefined ? undefined : eq(entry.carId, carId),
        gearId === undefined ? undefined : eq(entry.gearId, gearId),
        kinds === undefined ? undefined : inArray(entry.kind, [...kinds]),
        tombstones ? undefined : isNull(entry.removedAt),
        text ? contains(text) : undefined,
        after
          ? sql`(${entry.on}, ${entry.recorded}) < (${after.on}::date, ${after.recorded}::bigint)`
          : undefined,
      ),
    )
    .orderBy(desc(entry.on), desc(entry.recorded))
    // one more than asked for tells whether there is a next page
    .limit(limit + 1);
  const page = rows.slice(0, limit);
  const last = page.at(-1);
  const next = rows.length > limit && last ? { on: last.on, recorded: last.recorded } : null;
  return { rows: page, next };
}

/** What is no text that somebody typed: ids, of which any word of hexadecimal digits would find some. */
const NOT_TYPED = [
  'id',
  'kind',
  'zone',
  'car',
  'gear',
  'component',
  'tyreSet',
  'items',
  'photos',
  'event',
  'notice',
  'resolvedBy',
  'job',
];

/** Every word occurs in some value of the body that is text. */
const textArray = (texts: readonly string[]) =>
  sql`array[${sql.join(
    texts.map((text) => sql`${text}::text`),
    sql`, `,
  )}]`;

function contains(text: string): SQL | undefined {
  const words = text.split(/\s+/).filter((word) => word !== '');
  return and(
    ...words.map((word) => {
      const like = `%${word.replace(/[\\%_]/g, '\\$&')}%`;
      return sql`exists (
        select 1
        from jsonb_path_query(${entry.body} - ${textArray(NOT_TYPED)}, 'strict $.**') as part
        where jsonb_typeof(part) = 'string' and part #>> '{}' ilike ${like})`;
    }),
  );
}
