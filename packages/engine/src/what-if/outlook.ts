import type { Book } from '../log/book.ts';
import type { Item } from '../log/item.ts';
import { type OrderBy, orderBy } from '../orders/index.ts';
import type { Analysis, AtEvent, ItemResult, ReasonCode } from '../wear/result.ts';

/** What is known of a car's items at the end of an event, and what to do about it; days are civil dates. */
export type Outlook = {
  /** of the event, or of the use that was added */
  id: string;
  /** what may run out before it is over: what has run out already first, then the surest */
  runsOut: RunsOut[];
  /** of these nobody can say */
  notKnown: { id: string; name: string; reasonCode: ReasonCode | null }[];
  /** so many last, as far as is known */
  lasts: number;
};

export type RunsOut = {
  id: string;
  name: string;
  /** `likely`: more likely than not; `could`: one time in ten or more */
  how: 'already' | 'likely' | 'could';
  /** the last day for the work; null where it has run out already */
  latestWork: string | null;
  /** done before this day the work would not last until the end; null where it lasts from today on */
  notBefore: string | null;
  /** true: the interval is too short even for work on the eve */
  tooShort: boolean;
  /** null: no parts are on their way, and no days are needed to get them */
  parts: OrderBy | null;
  /** days to get them */
  leadDays: number;
};

/** More likely than not. */
const LIKELY = 0.5;
const PLACE = { already: 0, likely: 1, could: 2 } as const;

/**
 * What one event means for a car.
 *
 * @param analysis of the same book, projected to the event
 * @param id the event's
 */
export function outlookOf(book: Book, analysis: Analysis, id: string): Outlook {
  const outlook: Outlook = { id, runsOut: [], notKnown: [], lasts: 0 };
  const items = new Map(book.items.map((item) => [item.id, item]));
  for (const result of analysis.items) {
    const item = items.get(result.id);
    const at = result.atEvent?.find((one) => one.id === id);
    if (item === undefined || result.reasonCode === 'doneOnce') continue;
    const named = { id: item.id, name: item.name };
    const how = howItRunsOut(result, at);
    if (how === 'already' || (how !== null && at !== undefined))
      outlook.runsOut.push({ ...named, how, ...workOf(how, { book, item, result, at }) });
    else if (at === undefined || at.ready === null)
      outlook.notKnown.push({ ...named, reasonCode: result.reasonCode });
    else outlook.lasts += 1;
  }
  outlook.runsOut.sort(
    (a, b) => PLACE[a.how] - PLACE[b.how] || compare(a.latestWork ?? '', b.latestWork ?? ''),
  );
  return outlook;
}

function howItRunsOut(result: ItemResult, at: AtEvent | undefined): RunsOut['how'] | null {
  if (result.state === 'overdue') return 'already';
  if (at?.ready !== false) return null;
  return 1 - (at.pReady ?? 1) >= LIKELY ? 'likely' : 'could';
}

type Known = { book: Book; item: Item; result: ItemResult; at: AtEvent | undefined };

function workOf(
  how: RunsOut['how'],
  { book, item, result, at }: Known,
): Pick<RunsOut, 'latestWork' | 'notBefore' | 'tooShort' | 'parts' | 'leadDays'> {
  const { asOf, orders = [] } = book;
  const latestWork = how === 'already' ? null : (at?.latestWorkDate ?? null);
  const earliest = at?.earliestWorkDate ?? null;
  const parts = orderBy({
    latestWork,
    likely: result.dueDate?.p50 ?? null,
    leadDays: item.leadDays,
    orders: orders.filter((order) => order.item === item.id),
    service: result.service ?? null,
    asOf,
  });
  return {
    latestWork,
    notBefore: earliest !== null && earliest > asOf ? earliest : null,
    tooShort: at?.ready === false && at.date > asOf && earliest === null,
    leadDays: item.leadDays,
    // the day of the work itself is said already
    parts: parts?.kind === 'orderBy' && item.leadDays === 0 ? null : parts,
  };
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
