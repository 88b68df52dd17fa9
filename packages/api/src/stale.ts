import { namesOf, type Tx } from '@quartermark/db';
import { badField, type Refused, refuse } from './refused.ts';

type Versioned = { revision: number; changedAt: Date; changedBy: string };

/** A `conflict` over a thing that keeps only its newest form: that form travels with it. */
export async function stale(
  tx: Tx,
  garageId: string,
  what: string,
  baseRevision: number,
  row: Versioned & { body: unknown },
): Promise<Refused> {
  const names = await namesOf(tx, garageId, [row.changedBy]);
  return refuse(
    'conflict',
    'baseRevision',
    `${what} changed since you opened this (revision ${row.revision}, you had ${baseRevision}). Both are shown; keep one, or write the two together.`,
    {
      conflict: {
        revision: row.revision,
        body: row.body,
        by: names.get(row.changedBy) ?? row.changedBy,
        at: row.changedAt.toISOString(),
      },
    },
  );
}

/**
 * Why something of which only the newest form is kept was not written: it is past `baseRevision`, or there is none.
 *
 * @param none what to say where there is none
 */
export async function staleOrNone(
  tx: Tx,
  garageId: string,
  said: { what: string; none: string },
  baseRevision: number,
  row: (Versioned & { body: unknown }) | null,
): Promise<Refused> {
  if (row) return stale(tx, garageId, said.what, baseRevision, row);
  return badField('baseRevision', `baseRevision: ${said.none}; send 0`);
}
