import { formatDay } from '../../display/format-day.ts';
import { formatAmount } from '../../display/format-quantity.ts';
import { itemWords } from '../../display/item-words.ts';
import type { Item, Limit } from '../../log/item.ts';
import { leadDaysNow, orderBy } from '../../orders/index.ts';
import { type AmountLimitResult, type ItemResult, isAmountLimit } from '../../wear/result.ts';
import type { Piece } from '../asked.ts';
import { afterWork, type Draft, draft, MET, unknown, type Work } from '../draft.ts';
import { type Known, useClassOf } from '../known.ts';
import type { Margin } from '../result.ts';
import { doneBy } from './done-by.ts';

/**
 * Limits of the items of parts that are on the car. Parts have no forecast: what is planned for the
 * event and the way home is added to what they have done.
 */
export function partLimitNeeds(known: Known): Draft[] {
  return known.car.parts.flatMap((part) =>
    (part.result?.analysis.items ?? []).flatMap((result) => {
      const item = part.items.find(({ id }) => id === result.id);
      return item === undefined || result.reasonCode === 'doneOnce'
        ? []
        : [needOf(known, part, item, result)];
    }),
  );
}

type Tight = { margin: Margin; words: string };

function needOf(known: Known, part: Piece, item: Item, result: ItemResult): Draft {
  const { distance: unit } = known.car.saidIn;
  const tight = tightest(known, item, result);
  const words = itemWords(result, item, { unit, laidUp: false, asOf: known.today });
  const now = words.detail === '' ? words.word : `${words.word}: ${words.detail}`;
  const told = {
    subject: item.id,
    title: `${part.gear.gear.name}: ${item.name}`,
    margin: tight?.margin ?? null,
    evidence: result.evidence,
    adviceOnly: !known.requirements.limitsOf.includes(item.role),
  };
  if (result.state === 'overdue')
    return draft(
      'limit',
      { ...told, reason: `${now}.` },
      afterWork(known, workOf(known, part, item, result)),
    );
  if (result.state === 'unknown')
    return draft(
      'limit',
      { ...told, reason: `${now}.` },
      unknown(known, {
        work: 'writeDown',
        what: `Say when it was last done: ${told.title}`,
        record: { at: 'gear', gear: part.gear.id },
      }),
    );
  if (tight !== null && tight.margin.value < 0)
    return draft(
      'limit',
      { ...told, reason: tight.words },
      afterWork(known, workOf(known, part, item, result)),
    );
  return draft('limit', { ...told, reason: `${now}.` }, MET);
}

function workOf(known: Known, part: Piece, item: Item, result: ItemResult): Work {
  const orders = part.orders.filter((order) => order.item === item.id);
  const service = result.service ?? null;
  const latest = known.event?.latest ?? null;
  const { leadDays } = item;
  const parts = orderBy({
    latestWork: latest,
    likely: null,
    leadDays,
    orders,
    service,
    asOf: known.today,
  });
  const { work, what } = doneBy(item.role);
  return {
    work,
    what:
      what === null
        ? `Service: ${part.gear.gear.name}, ${item.name}`
        : `${what}: ${part.gear.gear.name}`,
    record: { at: 'gear', gear: part.gear.id },
    parts: parts?.kind === 'orderBy' && leadDays === 0 ? null : parts,
    leadDays: leadDaysNow(leadDays, orders, service),
  };
}

/** The limit with the least left at the end, as a share of the limit; null without an event or a limit. */
function tightest(known: Known, item: Item, result: ItemResult): Tight | null {
  if (known.event === null) return null;
  let worst: (Tight & { share: number }) | null = null;
  for (const limit of result.limits) {
    const one = isAmountLimit(limit)
      ? amountAtEnd(known, item, limit)
      : labelAtEnd(known, limit.dueDate);
    if (one !== null && (worst === null || one.share < worst.share)) worst = one;
  }
  return worst;
}

const UNIT = { km: 'km', hours: 'h', sessions: 'sessions', launches: 'launches' } as const;

function amountAtEnd(known: Known, item: Item, result: AmountLimitResult) {
  const limits = result.severe ? (item.severe?.limits ?? []) : item.limits;
  const rule = limits.find(({ measure }) => measure === result.measure);
  if (rule === undefined || known.event === null) return null;
  const value = result.remaining - plannedOf(known, rule, result.measure);
  const { distance: unit } = known.car.saidIn;
  const amount = (of: number) => formatAmount(result.measure, of, unit);
  return {
    margin: { value, unit: UNIT[result.measure] },
    share: value / result.limit,
    words: `${amount(Math.max(0, result.remaining))} left, ${amount(result.remaining - value)} planned.`,
  };
}

/** What is planned, weighted as the limit weighs it. */
function plannedOf(known: Known, rule: Limit, measure: AmountLimitResult['measure']): number {
  const { event } = known;
  if (event === null || !('weights' in rule || rule.measure === measure)) return 0;
  const weights = 'weights' in rule ? (rule.weights ?? {}) : {};
  const weight = weights[useClassOf(event)] ?? 1;
  const { planned, wayKm } = event;
  switch (measure) {
    case 'km':
      return (planned?.distanceKm ?? 0) * weight + (wayKm ?? 0) * (weights.road ?? 1);
    case 'hours':
      return (planned?.hours ?? 0) * weight;
    case 'sessions':
      return (planned?.sessions ?? 0) * weight;
    case 'launches':
      return (planned?.launches ?? 0) * weight;
  }
}

function labelAtEnd({ event }: Known, dueDate: string) {
  if (event === null) return null;
  // the last day itself is still valid
  const over = event.end > dueDate;
  const margin = { value: over ? -1 : 0, unit: 'days' } as const;
  return over
    ? { margin, share: -1, words: `Runs out on ${formatDay(dueDate)}, before it is over.` }
    : null;
}
