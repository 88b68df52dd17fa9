import { daysBetween } from '../../calendar/add.ts';
import { formatDay } from '../../display/format-day.ts';
import { formatCount } from '../../display/format-quantity.ts';
import type { EntryKind } from '../../log/entry.ts';
import type { EventSort } from '../../log/event-sort.ts';
import { type Draft, draft, MET, unknown } from '../draft.ts';
import type { Known } from '../known.ts';

const READ = {
  work: 'writeDown',
  what: 'Read the odometer and write it down',
  record: { at: 'entry', kind: 'odometer' },
} as const;

/** The odometer was read lately: everything counted in distance rests on it. */
export function odometerNeeds(known: Known): Draft[] {
  const { analysis, requirements, today } = known;
  const { odometer } = analysis;
  const title = 'Odometer';
  if (odometer === null)
    return [
      draft(
        'odometer',
        { title, reason: 'No odometer reading is on record.' },
        unknown(known, READ),
      ),
    ];
  const age = daysBetween(odometer.on, today);
  const margin = { value: requirements.odometerDays - age, unit: 'days' } as const;
  const ago = age === 0 ? 'today' : `${formatCount(age, 'day')} ago, on ${formatDay(odometer.on)}`;
  const told = { title, margin, evidence: [odometer.entry] };
  if (margin.value >= 0) return [draft('odometer', { ...told, reason: `Last read ${ago}.` }, MET)];
  const reason = `Last read ${ago}: what was driven since is not known.`;
  return [draft('odometer', { ...told, reason }, unknown(known, READ))];
}

/** Events that are over and of which nothing is on record: what the car did there is not counted. */
export function pastNeeds(known: Known): Draft[] {
  const { past } = known.car;
  const open = past.filter(({ onRecord, id }) => !onRecord && id !== known.event?.id);
  if (open.length === 0 && past.length > 0)
    return [
      draft('lastEvent', { title: 'Events that are over', reason: 'All are on record.' }, MET),
    ];
  return open.map(({ id, name, sort, start }) =>
    draft(
      'lastEvent',
      {
        subject: id,
        title: name,
        reason: `${name} on ${formatDay(start)} is over and nothing of it is on record.`,
      },
      unknown(known, {
        work: 'writeDown',
        what: `Write down what it did at ${name}, or that it did not go`,
        record: { at: 'entry', kind: useKindOf(sort) },
      }),
    ),
  );
}

/** What it does at the event is said, or nothing can be said of its end. */
export function plannedUseNeeds(known: Known): Draft[] {
  const { event } = known;
  if (event === null) return [];
  const title = 'What it does there';
  if (event.planned !== null) {
    const { sessions, launches, distanceKm } = event.planned;
    const words =
      launches > 0
        ? formatCount(launches, 'launch', 'launches')
        : sessions > 0
          ? formatCount(sessions, 'session')
          : `${Math.round(distanceKm)} km`;
    return [draft('plannedUse', { title, reason: `${words} planned.` }, MET)];
  }
  return [
    draft(
      'plannedUse',
      { title, reason: 'Nobody said what it does there, so no limit is judged at its end.' },
      unknown(known, {
        work: 'writeDown',
        what: 'Say what it does there',
        record: { at: 'event' },
      }),
    ),
  ];
}

/** The kind of entry that what was done at an event of a sort is written down with. */
function useKindOf(sort: EventSort): EntryKind {
  switch (sort) {
    case 'circuit':
    case 'autocross':
      return 'session';
    case 'dragStrip':
      return 'strip';
    case 'roadTrip':
    case 'meet':
      return 'drive';
  }
}
