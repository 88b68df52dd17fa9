import { addDays } from '../../calendar/add.ts';
import { formatDay } from '../../display/format-day.ts';
import { formatNumber } from '../../display/format-number.ts';
import type { Entry, EntryOf } from '../../log/entry.ts';
import { sortEntries } from '../../log/sort-entries.ts';
import { keptEntries } from '../../matters/kept-entries.ts';
import { afterWork, type Draft, draft, MET, unknown } from '../draft.ts';
import type { Known } from '../known.ts';

type Inspection = EntryOf<'inspection'> & Entry;

function inspectionsOf({ car, today }: Known): Inspection[] {
  return sortEntries(keptEntries(car.book.entries, today)).filter(
    (entry): entry is Inspection => entry.kind === 'inspection',
  );
}

const SHOW = {
  work: 'inspection',
  what: 'Have it looked over, and write the result down',
  record: { at: 'entry', kind: 'inspection' },
} as const;

/** Somebody looked it over within so many days before the event, and passed it. */
export function inspectionNeeds(known: Known): Draft[] {
  const title = 'Looked over';
  const last = inspectionsOf(known).at(-1);
  if (last === undefined)
    return [
      draft('inspection', { title, reason: 'No inspection is on record.' }, unknown(known, SHOW)),
    ];
  const { requirements, event, today } = known;
  const from = addDays(event?.start ?? today, -requirements.inspectionDays);
  const told = { title, evidence: [last.id] };
  const words = `${last.purpose}, ${formatDay(last.on)}: ${last.result}`;
  const end = event?.end ?? today;
  if (last.validTo !== undefined && last.validTo < end)
    return [
      draft(
        'inspection',
        { ...told, reason: `${words}, valid until ${formatDay(last.validTo)}.` },
        afterWork(known, SHOW),
      ),
    ];
  const good = last.result === 'passed' && (last.on >= from || last.validTo !== undefined);
  const late = last.on < from && last.validTo === undefined ? `, before ${formatDay(from)}` : '';
  return [
    draft(
      'inspection',
      { ...told, reason: `${words}${late}.` },
      good ? MET : afterWork(known, SHOW),
    ),
  ];
}

/** No louder than the organiser allows, by the last measurement, else by the figure of the car. */
export function noiseNeeds(known: Known): Draft[] {
  const { noiseDb } = known.requirements;
  if (noiseDb === undefined) return [];
  const title = 'Noise';
  const work = {
    work: 'measure',
    what: 'Measure the noise as the organiser does, and write it down',
    record: { at: 'entry', kind: 'inspection' },
  } as const;
  const measured = inspectionsOf(known).findLast((entry) => entry.noiseDb !== undefined);
  const db = measured?.noiseDb ?? known.car.book.car.profile.noiseDb;
  const limit = `${formatNumber(noiseDb, 1)} dB allowed`;
  if (db === undefined)
    return [draft('noise', { title, reason: `Never measured; ${limit}.` }, unknown(known, work))];
  const told = {
    title,
    margin: { value: noiseDb - db, unit: 'dB' } as const,
    evidence: [measured?.id ?? null],
    reason: `${formatNumber(db, 1)} dB${measured ? ` on ${formatDay(measured.on)}` : ' by the car’s own figure'}; ${limit}.`,
  };
  if (db <= noiseDb) return [draft('noise', told, MET)];
  return [
    draft(
      'noise',
      told,
      afterWork(known, { ...work, what: 'Make it quieter, measure again, and write it down' }),
    ),
  ];
}
