import { daysBetween } from '../../calendar/add.ts';
import { formatDay } from '../../display/format-day.ts';
import { leadDaysNow, orderBy } from '../../orders/index.ts';
import type { ItemResult } from '../../wear/result.ts';
import type { Piece } from '../asked.ts';
import { afterWork, type Draft, draft, MET, unknown } from '../draft.ts';
import type { Known } from '../known.ts';

/** Who drives, and the dated gear and papers of each until the last day. */
export function crewNeeds(known: Known): Draft[] {
  const { event, car, requirements } = known;
  if (event === null) return [];
  const title = 'Who drives';
  if (car.drivers.length === 0)
    return [
      draft(
        'drivers',
        { title, reason: 'Nobody is named, so no helmet, harness or licence is looked at.' },
        unknown(known, { work: 'writeDown', what: 'Say who drives', record: { at: 'event' } }),
      ),
    ];
  const names = car.drivers.map(({ gear }) => gear.gear.name).join(', ');
  const { rules } = requirements;
  const edition =
    rules === undefined ? '' : ` By ${rules.name}, edition of ${formatDay(rules.edition)}.`;
  return [
    draft('drivers', { title, reason: `${names}.` }, MET),
    ...car.drivers.flatMap((person) => gearNeeds(known, person, edition)),
  ];
}

function gearNeeds(known: Known, person: Piece, edition: string): Draft[] {
  const { name } = person.gear.gear;
  const results = person.result?.analysis.items ?? [];
  const record = { at: 'gear', gear: person.gear.id } as const;
  if (results.length === 0)
    return [
      draft(
        'safetyGear',
        {
          subject: person.gear.id,
          title: `${name}: gear and papers`,
          reason: `No dated gear or papers of ${name} are on record.${edition}`,
        },
        unknown(known, {
          work: 'papers',
          what: `Write down the labels and papers of ${name}`,
          record,
        }),
      ),
    ];
  return results.flatMap((result) => {
    const item = person.items.find(({ id }) => id === result.id);
    if (item === undefined) return [];
    const subject = `${person.gear.id}:${item.id}`;
    const title = `${name}: ${item.name}`;
    const day = lastDay(result);
    if (day === null)
      return [
        draft(
          'safetyGear',
          { subject, title, reason: `Its last day is not on record.${edition}` },
          unknown(known, { work: 'papers', what: `Write down the label: ${title}`, record }),
        ),
      ];
    const end = known.event?.end ?? known.today;
    const told = {
      subject,
      title,
      margin: { value: daysBetween(end, day), unit: 'days' } as const,
      evidence: result.evidence,
    };
    if (day >= end)
      return [
        draft('safetyGear', { ...told, reason: `Valid until ${formatDay(day)}.${edition}` }, MET),
      ];
    const orders = person.orders.filter((order) => order.item === item.id);
    const leadDays = leadDaysNow(item.leadDays, orders, null);
    const parts = orderBy({
      latestWork: known.event?.latest ?? null,
      likely: null,
      leadDays: item.leadDays,
      orders,
      service: null,
      asOf: known.today,
    });
    return [
      draft(
        'safetyGear',
        { ...told, reason: `Runs out on ${formatDay(day)}, before the last day.${edition}` },
        afterWork(known, {
          work: 'papers',
          what: `Renew: ${title}`,
          record,
          leadDays,
          parts: parts?.kind === 'orderBy' && item.leadDays === 0 ? null : parts,
        }),
      ),
    ];
  });
}

/** The first day on which one of its limits is up; null where none is of the calendar. */
function lastDay({ limits, state }: ItemResult): string | null {
  if (state === 'unknown') return null;
  const days = limits.flatMap((limit) => ('dueDate' in limit ? [limit.dueDate] : []));
  return days.sort()[0] ?? null;
}
