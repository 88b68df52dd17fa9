import type { GearRow, ItemView } from '@quartermark/api/client';
import type { ItemResult } from '@quartermark/engine';
import {
  BEDDING_WORDS,
  fittedLine,
  type GearFacts,
  type ItemWords,
  itemUrgency,
  itemWords,
  measuredLines,
} from '@quartermark/engine/display';
import { depthMm } from '@quartermark/engine/log';

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

/**
 * As urgent as its most urgent item, or as pads that are on a car and want bedding; what is not watched
 * comes last. Smaller is more urgent.
 */
export function gearUrgency({ analysis, life }: Pick<GearRow, 'analysis' | 'life'>): number {
  const { fitted = null, bedding = null } = life ?? {};
  const unbedded = fitted !== null && bedding !== null && BEDDING_WORDS[bedding].toDo;
  return Math.min(
    unbedded ? UNBEDDED : Number.MAX_SAFE_INTEGER,
    ...(analysis?.items ?? []).map(itemUrgency),
  );
}

/**
 * How a part stands, a sentence each: where it is, how thin it was last. Empty for tools and people.
 */
export function standsLines({ gear, life, fittedTo }: GearRow, unit: 'km' | 'mi'): string[] {
  if (gear.kind !== 'component' || life === null) return [];
  const least = gear.leastDepth ? depthMm(gear.leastDepth) : null;
  return [fittedLine(fittedTo, life, unit), ...measuredLines(life, least)];
}
