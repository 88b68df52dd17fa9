import type { GearRow, ItemView } from '@quartermark/api/client';
import type { ItemResult } from '@quartermark/engine';
import {
  BEDDING_WORDS,
  fittedLine,
  type GearFacts,
  type ItemWords,
  itemUrgency,
  itemWords,
  wearFirst,
  wearSentences,
  wearToDo,
} from '@quartermark/engine/display';

/** What the sentences about it are made of; null where it could not be worked out. */
export function gearFacts(row: GearRow, unit: 'km' | 'mi'): GearFacts | null {
  const { gear, items, analysis, life } = row;
  return analysis && { name: gear.name, items, analysis, life, unit };
}

export type Watched = { item: ItemView; result: ItemResult; words: ItemWords };

/** Its items with what is said of each, the most urgent first. @param unit in which distances are told */
export function watchedOf(row: Pick<GearRow, 'items' | 'analysis'>, unit: 'km' | 'mi'): Watched[] {
  const on = { unit, laidUp: false, asOf: row.analysis?.asOf ?? null };
  const results = new Map(row.analysis?.items.map((result) => [result.id, result]));
  return row.items
    .flatMap((item) => {
      const result = results.get(item.id);
      return result ? [{ item, result, words: itemWords(result, item.item, on) }] : [];
    })
    .sort((a, b) => itemUrgency(a.result) - itemUrgency(b.result));
}

/** Behind what is due soon and before what is not on record; see `itemUrgency()`. */
const UNBEDDED = 1_999_999;
/** What is worn too thin stands in the middle of what is overdue, what soon will be before unbedded pads. */
const WORN = { overdue: 500_000, dueSoon: UNBEDDED - 1 } as const;

/**
 * As urgent as its most urgent item, as its wear, or as pads that are on a car and want bedding; what is
 * not watched comes last. Smaller is more urgent.
 */
export function gearUrgency({ analysis, life }: Pick<GearRow, 'analysis' | 'life'>): number {
  const { fitted = null, bedding = null } = life ?? {};
  const unbedded = fitted !== null && bedding !== null && BEDDING_WORDS[bedding].toDo;
  const worn = life?.wear ? wearToDo(life.wear, 'km') : null;
  return Math.min(
    unbedded ? UNBEDDED : Number.MAX_SAFE_INTEGER,
    worn ? WORN[worn.mark] : Number.MAX_SAFE_INTEGER,
    ...(analysis?.items ?? []).map(itemUrgency),
  );
}

/** The line on its wear where that runs out before what is watched; null where it does not. */
export function wearLine({ analysis, life }: GearRow, unit: 'km' | 'mi') {
  return life?.wear ? wearFirst(life.wear, analysis?.items ?? [], unit) : null;
}

/** Where a part is and what it has done there; null for tools and people. @param unit of distances */
export function fittedWords({ gear, life, fittedTo }: GearRow, unit: 'km' | 'mi'): string | null {
  return gear.kind !== 'component' || life === null ? null : fittedLine(fittedTo, life, unit);
}

/** How a part stands, a sentence each: where it is, how it wears. Empty for tools and people. */
export function standsLines(row: GearRow, unit: 'km' | 'mi'): string[] {
  const fitted = fittedWords(row, unit);
  if (fitted === null) return [];
  return [fitted, ...(row.life?.wear ? wearSentences(row.life.wear, unit) : [])];
}
