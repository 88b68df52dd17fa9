import type { Book } from '../log/book.ts';
import { canonicalJson } from '../log/canonical-json.ts';
import type { Item } from '../log/item.ts';
import type { CarStatus } from '../matters/result.ts';
import type { Analysis, ItemResult } from '../wear/result.ts';
import type { SaidLine } from './result.ts';

/** The limits of an item as text: the same text, the same limits. */
export function limitsText({ limits, severe }: Pick<Item, 'limits' | 'severe'>): string {
  return canonicalJson({ limits, severe: severe ?? null });
}

/**
 * What an analysis says of when its items fall due, as lines to be kept: those in limits or due soon with
 * a likely day. Nothing is said of what is overdue, of what is not wholly known, of what is done for
 * good, nor of a car that nobody here drives (away, in pieces, sold).
 *
 * @param analysis of the same book
 */
export function saidOf(book: Pick<Book, 'items'>, analysis: SayingAnalysis): SaidLine[] {
  if (analysis.status !== 'inUse' && analysis.status !== 'laidUp') return [];
  const items = new Map(book.items.map((item) => [item.id, item]));
  return analysis.items.flatMap((result) => {
    const item = items.get(result.id);
    return item === undefined ? [] : (lineOf(result, item, analysis) ?? []);
  });
}

/** The part of an analysis that says something to be held against it later. */
export type SayingAnalysis = Pick<Analysis, 'car' | 'asOf' | 'engineVersion' | 'items'> & {
  status: CarStatus;
};

function lineOf(
  { id, state, reasonCode, service, dueDate, binding, limits }: ItemResult,
  item: Item,
  { car, asOf, engineVersion }: SayingAnalysis,
): SaidLine | null {
  const early = dueDate?.p10 ?? null;
  const likely = dueDate?.p50 ?? null;
  const ahead = (state === 'fine' || state === 'dueSoon') && reasonCode === null;
  const saying = ahead && limits.every(({ known }) => known);
  if (!saying || early === null || likely === null) return null;
  return {
    car,
    item: id,
    saidOn: asOf,
    since: service ?? null,
    early,
    likely,
    late: dueDate?.p90 ?? null,
    binding,
    limits: limitsText(item),
    engineVersion,
    afterwards: false,
  };
}
