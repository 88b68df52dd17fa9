import { daysBetween } from '../../calendar/add.ts';
import { formatDay } from '../../display/format-day.ts';
import { formatAmount } from '../../display/format-quantity.ts';
import { itemWords } from '../../display/item-words.ts';
import type { Item } from '../../log/item.ts';
import { leadDaysNow, orderBy } from '../../orders/index.ts';
import type { AtEvent, AtEventLimit, ItemResult } from '../../wear/result.ts';
import { afterWork, type Draft, draft, MET, unknown, type Work } from '../draft.ts';
import type { Known } from '../known.ts';
import type { Margin } from '../result.ts';
import { doneBy } from './done-by.ts';

/** Limits of the car's items at the end of the event and of the way home; for the road as they stand. */
export function limitNeeds(known: Known): Draft[] {
  const { analysis, car, requirements } = known;
  const byId = new Map(car.book.items.map((item) => [item.id, item]));
  const needs = analysis.items.flatMap((result) => {
    const item = byId.get(result.id);
    return item === undefined || result.reasonCode === 'doneOnce'
      ? []
      : [limitNeed(known, item, result)];
  });
  const watched = new Set(
    [...car.book.items, ...car.parts.flatMap(({ items }) => items)].map(({ role }) => role),
  );
  const missing = requirements.watched.filter((role) => !watched.has(role));
  return [
    ...needs,
    ...missing.map((role) =>
      draft(
        'watched',
        {
          subject: role,
          title: doneBy(role).name,
          reason: `No item says when ${doneBy(role).name.toLowerCase()} is due, or when it was last done.`,
        },
        unknown(known, {
          work: 'writeDown',
          what: `Add ${doneBy(role).name.toLowerCase()} with its limits and the day it was last done`,
          record: { at: 'item' },
        }),
      ),
    ),
  ];
}

function limitNeed(known: Known, item: Item, result: ItemResult): Draft {
  const at = result.atEvent?.find(({ id }) => id === known.event?.id);
  const { margin, reason } = said(known, item, result, at);
  const told = {
    subject: item.id,
    title: item.name,
    reason,
    margin,
    evidence: result.evidence,
    // the roles that block are the requirement's
    adviceOnly: !known.requirements.limitsOf.includes(item.role),
  };
  if (result.state === 'overdue')
    return draft('limit', told, afterWork(known, workOf(known, item, result, at)));
  if (result.state === 'unknown' && result.reasonCode === 'noBaseline')
    return draft('limit', told, unknown(known, writeDown(item)));
  if (at === undefined ? result.probablyOverdue : at.ready === false)
    return at === undefined
      ? draft('limit', told, unknown(known, READING))
      : draft('limit', told, afterWork(known, workOf(known, item, result, at)));
  if (at === undefined ? result.state === 'unknown' : at.ready === null)
    return draft('limit', told, unknown(known, writeDown(item)));
  return draft('limit', told, MET);
}

const READING: Work = {
  work: 'writeDown',
  what: 'Read the odometer and write it down',
  record: { at: 'entry', kind: 'odometer' },
};

function writeDown({ id, name }: Item): Work {
  return {
    work: 'writeDown',
    what: `Say when it was last done: ${name}`,
    record: { at: 'entry', kind: 'service', item: id },
  };
}

function workOf(known: Known, item: Item, result: ItemResult, at: AtEvent | undefined): Work {
  const { car, today, event } = known;
  const orders = (car.book.orders ?? []).filter((order) => order.item === item.id);
  const service = result.service ?? null;
  const latest = at?.latestWorkDate ?? event?.latest ?? null;
  const parts = orderBy({
    latestWork: latest,
    likely: result.dueDate?.p50 ?? null,
    leadDays: item.leadDays,
    orders,
    service,
    asOf: today,
  });
  const { work, what, kind } = doneBy(item.role);
  return {
    work,
    what: what ?? `Service: ${item.name}`,
    record: { at: 'entry', kind, item: item.id },
    latest,
    earliest: at?.earliestWorkDate ?? null,
    // the day of the work itself is said already
    parts: parts?.kind === 'orderBy' && item.leadDays === 0 ? null : parts,
    leadDays: leadDaysNow(item.leadDays, orders, service),
    possible: !isTooShort(at, today),
  };
}

/** The interval does not last for the event, even with work on the eve. */
function isTooShort(at: AtEvent | undefined, today: string): boolean {
  return at?.ready === false && at.date > today && at.earliestWorkDate === null;
}

type Said = { margin: Margin | null; reason: string };

function said(known: Known, item: Item, result: ItemResult, at: AtEvent | undefined): Said {
  const { car, analysis, today } = known;
  const unit = car.saidIn.distance;
  const on = { unit, laidUp: analysis.laidUp !== null, asOf: today };
  const words = itemWords(result, item, on);
  const now = words.detail === '' ? words.word : `${words.word}: ${words.detail}`;
  const tightest = at && tightestOf(at);
  const margin =
    tightest === undefined || tightest === null ? null : marginOf(tightest, at as AtEvent);
  if (result.state === 'overdue' || at === undefined || tightest == null)
    return { margin, reason: `${now}.` };
  if (at.ready === null) return { margin, reason: `${now}.` };
  return {
    margin,
    reason: at.ready ? lasts(tightest, at, unit) : runsOut(tightest, unit, at, today),
  };
}

/** The limit most likely reached; of those that are not, the one with the least to spare. */
function tightestOf({ limits, endDate }: AtEvent): AtEventLimit | null {
  const spare = (limit: AtEventLimit) =>
    'after' in limit
      ? (limit.limit - limit.after.p90) / limit.limit
      : daysBetween(endDate, limit.dueDate) / 365;
  return limits.reduce<AtEventLimit | null>(
    (worst, one) =>
      worst === null ||
      one.pReached > worst.pReached ||
      (one.pReached === worst.pReached && spare(one) < spare(worst))
        ? one
        : worst,
    null,
  );
}

const UNIT = { km: 'km', hours: 'h', sessions: 'sessions', launches: 'launches' } as const;

function marginOf(limit: AtEventLimit, { endDate }: AtEvent): Margin {
  if (!('after' in limit)) return { value: daysBetween(endDate, limit.dueDate), unit: 'days' };
  return { value: limit.limit - limit.after.p90, unit: UNIT[limit.measure] };
}

function runsOut(
  limit: AtEventLimit,
  unit: 'km' | 'mi',
  { endDate }: AtEvent,
  today: string,
): string {
  if (!('after' in limit))
    return `Runs out on ${formatDay(limit.dueDate)}, before ${endDate === today ? 'the day is over' : 'it is over'}.`;
  const amount = (value: number) => formatAmount(limit.measure, value, unit);
  const { mean, p90 } = limit.after;
  const most = amount(p90) === amount(mean) ? '' : `, could be ${amount(p90)}`;
  const most9 = limit.severe ? ' by the schedule for hard use' : '';
  return `${amount(mean)} of ${amount(limit.limit)} likely used by the end${most}${most9}.`;
}

function lasts(limit: AtEventLimit, { endDate }: AtEvent, unit: 'km' | 'mi'): string {
  if (!('after' in limit)) {
    const days = daysBetween(endDate, limit.dueDate);
    return `Lasts: up on ${formatDay(limit.dueDate)}, ${days} ${days === 1 ? 'day' : 'days'} after the end.`;
  }
  const amount = (value: number) => formatAmount(limit.measure, value, unit);
  const left = limit.limit - limit.after.p90;
  if (left <= 0)
    return `Lasts, by little: ${amount(limit.after.mean)} of ${amount(limit.limit)} likely used by the end.`;
  return `Lasts: at least ${amount(left)} of ${amount(limit.limit)} left at the end, nine times in ten.`;
}
