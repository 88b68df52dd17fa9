import type { DueLine } from '@quartermark/engine/display';
import { and, eq } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { dueLine } from '../due-schema.ts';

export type DueLinesOf = {
  garageId: string;
  carId: string;
  /** the car is not in use */
  apart: boolean;
  lines: readonly DueLine[];
};

/**
 * Puts a car's lines in place of those it had. Call it only where its snapshot was written in the same
 * transaction: the guard of the snapshot is the guard of its lines.
 */
export async function replaceDueLines(
  tx: Tx,
  { garageId, carId, apart, lines }: DueLinesOf,
): Promise<void> {
  const gone = tx
    .delete(dueLine)
    .where(and(eq(dueLine.garageId, garageId), eq(dueLine.carId, carId)));
  const put = () =>
    tx
      .insert(dueLine)
      .values(lines.map((line) => ({ ...columnsOf(line), garageId, carId, apart })));
  // sent down one connection without waiting in between
  await Promise.all(lines.length === 0 ? [gone] : [gone, put()]);
}

function columnsOf(line: DueLine) {
  const { id, cause, dates, likely, early: _, known, readingNeeded, ...columns } = line;
  return {
    ...columns,
    ...dates,
    itemId: id,
    causeCode: cause?.code ?? null,
    causeOn: cause?.on ?? null,
    known: known ?? true,
    ahead: likely !== undefined,
    readingNeeded: readingNeeded ?? false,
    orderBy: line.parts?.kind === 'orderBy' ? line.parts.day : null,
  };
}
