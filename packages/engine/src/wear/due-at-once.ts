import { formatDay, parseDay } from '../calendar/day-number.ts';
import type { CaseItem, CaseTrigger } from '../history/case.ts';
import { placeOfMark, sortPlaced } from '../history/placed.ts';
import type { LastService } from './last-service.ts';
import type { Ledger } from './ledger.ts';
import type { ItemResult } from './result.ts';

/**
 * What overrules an item's limits: something happened after which it is due at once, its owner says
 * that it is due, or it was a one-off and is done.
 *
 * A trigger counts until a service that comes later in the order of the log. "Treat as due now" counts until a service on its day
 * or later; a starting point is a service here too, but does not finish a one-off.
 *
 * @param judged by the limits alone
 * @param service its last service or starting point; null if nothing is on record
 */
export function overrule(
  judged: ItemResult,
  item: CaseItem,
  ledger: Ledger,
  service: LastService | null,
): ItemResult {
  const trigger = lastTrigger(item, ledger, service);
  if (trigger !== null) {
    const { entry, mark, code } = trigger;
    return {
      ...judged,
      state: 'overdue',
      reasonCode: 'trigger',
      reason: TRIGGERED,
      trigger: { entry, on: mark.entry.date, code },
      ...dueOn(judged, mark.entry.date),
    };
  }
  if (isAsked(item, ledger, service))
    return {
      ...judged,
      state: 'overdue',
      reasonCode: 'asked',
      reason: ASKED,
      ...dueOn(judged, item.dueSince ?? null),
    };
  if (item.once && isDone(ledger, service))
    return {
      ...judged,
      state: 'fine',
      reasonCode: 'doneOnce',
      reason: DONE_ONCE,
      ...dueOn(judged, null),
    };
  return judged;
}

/** What its limits forecast no longer matters: it is due since that day, or never again. */
function dueOn(judged: ItemResult, on: string | null): Partial<ItemResult> {
  if (judged.dueDate === undefined) return {};
  return {
    dueDate: { p10: on, p50: on, p90: on },
    pDueWithinLead: on === null ? 0 : 1,
    probablyOverdue: false,
    expects: null,
  };
}

/** A service of the log finishes a one-off: neither a starting point does, nor the day a part was new. */
function isDone({ timeline }: Ledger, service: LastService | null): boolean {
  if (service === null) return false;
  const placed = timeline[service.position];
  return placed?.entry === service.entry && !placed.startingPoint;
}

const TRIGGERED = 'Something happened after which this is due at once, whatever its limits say.';
const ASKED = 'You said: treat as due now. It has not been done since.';
const DONE_ONCE = 'This was to be done once, and has been.';

/** The latest of those that no service comes after. */
function lastTrigger(
  { triggers = [] }: CaseItem,
  { timeline, asOfDay }: Ledger,
  service: LastService | null,
): CaseTrigger | null {
  const since = service?.position ?? Number.NEGATIVE_INFINITY;
  const open = triggers.filter(
    ({ mark }) => mark.day <= asOfDay && placeOfMark(timeline, mark) > since,
  );
  const last = sortPlaced(open.map(({ mark }) => mark)).at(-1);
  return open.find(({ mark }) => mark === last) ?? null;
}

function isAsked(
  { dueSince }: CaseItem,
  { asOfDay }: Ledger,
  service: LastService | null,
): boolean {
  if (dueSince === undefined || parseDay(dueSince) > asOfDay) return false;
  return service === null || formatDay(service.day) < dueSince;
}
