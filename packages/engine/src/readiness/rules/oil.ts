import { daysBetween } from '../../calendar/add.ts';
import { formatDay } from '../../display/format-day.ts';
import { formatCount } from '../../display/format-quantity.ts';
import {
  oilStopOf,
  oilStopSentence,
  unexplainedRiseSentence,
} from '../../display/oil-stop-sentence.ts';
import { formatRough } from '../../display/rough-number.ts';
import { afterWork, type Draft, draft, MET, notMet, unknown } from '../draft.ts';
import { daysOf, type Known } from '../known.ts';

const LOOK = {
  work: 'oil',
  what: 'Read the stick by the car’s own procedure, and write it down',
  record: { at: 'entry', kind: 'oilCheck' },
} as const;
const FILL = {
  work: 'oil',
  what: 'Top up to MAX by the manual, and write it down',
  record: { at: 'entry', kind: 'oilTopUp' },
} as const;
const TITLE = 'Oil level';

/** The level is between the marks by the ledger, and nothing about it is odd. A low reading acts at once. */
export function oilLevelNeeds(known: Known): Draft[] {
  const { analysis, car } = known;
  if (car.book.car.profile.drive === 'electric') return [];
  const { oil } = analysis;
  const evidence = [
    oil.lastLook?.entry ?? null,
    ...(oil.lastReading ? [oil.lastReading.entry] : []),
  ];
  const told = {
    title: TITLE,
    evidence: [...new Set(evidence)].map((id) => (id === null ? null : String(id))),
  };
  const stop = oilStopOf(oil);
  const sentence = oilStopSentence(oil);
  if (sentence !== null && stop !== 'look') {
    const judged =
      stop === 'none'
        ? notMetToday(known)
        : afterWork(
            known,
            stop === 'over'
              ? { ...LOOK, what: 'Drain to MAX by the manual, and write the level down' }
              : FILL,
          );
    return [draft('oilLevel', { ...told, reason: sentence }, judged)];
  }
  const rise = oil.notices.find(
    ({ kind, answer }) => kind === 'unexplainedRise' && answer === null,
  );
  if (rise !== undefined && oil.unexplainedRise !== null)
    return [
      draft(
        'oilLevel',
        {
          ...told,
          reason: unexplainedRiseSentence(oil, car.saidIn.volume) ?? '',
          evidence: [rise.entry],
        },
        unknown(known, {
          ...LOOK,
          what: 'Find out why there is more oil, and answer the question',
          record: { at: 'entry', kind: 'answer', notice: rise.id },
        }),
      ),
    ];
  if (sentence !== null)
    return [draft('oilLevel', { ...told, reason: sentence }, unknown(known, LOOK))];
  if (oil.lastLook === null)
    return [
      draft('oilLevel', { title: TITLE, reason: 'No level is on record.' }, unknown(known, LOOK)),
    ];
  const above = oil.level.p10 + oil.spanL;
  return [
    draft(
      'oilLevel',
      {
        ...told,
        margin: { value: above, unit: 'L' },
        reason: `Between the marks by the log: last looked at on ${formatDay(oil.lastLook.on)}.`,
      },
      MET,
    ),
  ];
}

/** None on the stick: not to be started before it is topped up, today or on the day. */
function notMetToday(known: Known) {
  return known.event === null ? notMet(known, FILL) : afterWork(known, FILL);
}

/**
 * Begun at MAX, the oil stays above the floor until the next look: use over one session, or over a day of
 * launches or a tank of road, as much as nine engines in ten like it would use. A rate that was never
 * measured on this car is no ground for "fine", and no event could ever be the first: advice, not on record.
 */
export function oilLastsNeeds(known: Known): Draft[] {
  const { analysis, event, requirements, car } = known;
  if (event === null || event.planned === null || car.book.car.profile.drive === 'electric')
    return [];
  const { oil } = analysis;
  const title = 'Oil until the end';
  const room = (1 - requirements.oilFloor) * oil.spanL;
  const looks = looksOf(known);
  const use = usePerLookL(known, looks);
  const floor =
    requirements.oilFloor === 0
      ? 'MIN'
      : `${Math.round(requirements.oilFloor * 100)} % of the way to MAX`;
  const litres = (value: number) => formatRough(value, car.saidIn.volume);
  if (use === null)
    return [
      draft(
        'oilLasts',
        {
          title,
          reason: `How much it uses there was never measured. Begin at MAX, look after each ${looks.each}, take oil along.`,
          adviceOnly: true,
        },
        unknown(known, { ...FILL, what: `Begin at MAX, and look after each ${looks.each}` }),
      ),
    ];
  const margin = { value: room - use, unit: 'L' } as const;
  const each = `up to ${litres(use)} between two looks (${looks.each})`;
  const evidence = oil.lastLook === null ? [] : [oil.lastLook.entry];
  if (margin.value >= 0)
    return [
      draft(
        'oilLasts',
        {
          title,
          margin,
          evidence,
          reason: `Begun at MAX it stays above ${floor}: ${each}, with room for ${litres(room)}.`,
        },
        MET,
      ),
    ];
  return [
    draft(
      'oilLasts',
      {
        title,
        margin,
        evidence,
        reason: `Even begun at MAX it could fall below ${floor}: ${each}, with room for ${litres(room)}.`,
      },
      notMet(known, {
        ...FILL,
        what: 'Find out where the oil goes before it is used so hard',
        possible: false,
      }),
    ),
  ];
}

type Looks = { each: string; count: number };

/** Between two looks at the stick: a session, half a day of launches, or 500 km of road. */
function looksOf({ event }: Known): Looks {
  const sort = event?.event.sort;
  if (event === null || event.planned === null) return { each: 'session', count: 1 };
  if (sort === 'circuit' || sort === 'autocross')
    return { each: 'session', count: Math.max(1, event.planned.sessions || daysOf(event) * 4) };
  if (sort === 'dragStrip') return { each: 'half day', count: daysOf(event) * 2 };
  return { each: '500 km', count: Math.max(1, event.planned.distanceKm / 500) };
}

/** Litres between two looks, cautiously; null where the rate was never measured. */
function usePerLookL({ analysis, event }: Known, looks: Looks): number | null {
  const { oil } = analysis;
  if (event === null || event.planned === null || oil.status === 'none') return null;
  const { distanceKm, launches } = event.planned;
  switch (event.event.sort) {
    case 'circuit':
    case 'autocross':
      return oil.hardRate.fromPrior ? null : (oil.hardRate.p90 * distanceKm) / 1000 / looks.count;
    case 'dragStrip':
      return oil.stripPerRun === undefined ? null : (oil.stripPerRun.p90 * launches) / looks.count;
    case 'roadTrip':
    case 'meet':
      return (oil.roadRate.p90 * distanceKm) / 1000 / looks.count;
  }
}

const LOOK_DAYS = 7;

/** Somebody looked at the stick within the week. */
export function oilLookNeeds(known: Known): Draft[] {
  const { analysis, today, car } = known;
  if (car.book.car.profile.drive === 'electric') return [];
  const { lastLook } = analysis.oil;
  const title = 'Look at the stick';
  if (lastLook === null)
    return [draft('oilLook', { title, reason: 'No look is on record.' }, unknown(known, LOOK))];
  const age = daysBetween(lastLook.on, today);
  const told = {
    title,
    evidence: [lastLook.entry],
    margin: { value: LOOK_DAYS - age, unit: 'days' } as const,
    reason: age === 0 ? 'Looked at today.' : `Last looked at ${formatCount(age, 'day')} ago.`,
  };
  return [draft('oilLook', told, age <= LOOK_DAYS ? MET : afterWork(known, LOOK))];
}
