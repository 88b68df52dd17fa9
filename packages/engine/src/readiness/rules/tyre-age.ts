import { parseDay } from '../../calendar/day-number.ts';
import { afterWork, type Draft, draft, MET, unknown } from '../draft.ts';
import type { Known } from '../known.ts';

/** Makers ask for a yearly look after 5 years and for new tyres after 10; track tyres earlier (common practice, no source). */
const LOOK_YEARS = 5;
const OUT_YEARS = 10;
const DAYS_PER_YEAR = 365.2425;

/** Tyres by the week on their wall, at the end of the event. */
export function tyreAgeNeeds(known: Known): Draft[] {
  return known.car.parts.flatMap(({ gear, result }): Draft[] => {
    if (gear.gear.kind !== 'component' || gear.gear.sort !== 'tyreSet') return [];
    const life = result?.life ?? null;
    const told = { subject: gear.id, title: `${gear.gear.name}, age` };
    const from = life?.ageFrom ?? null;
    if (from === null)
      return [
        draft(
          'tyreAge',
          { ...told, reason: life?.ageUnread ?? 'No date code is on record.' },
          unknown(known, {
            work: 'measure',
            what: `Read the date code of ${gear.gear.name}, and write it down`,
            record: { at: 'entry', kind: 'measure', component: gear.id },
          }),
        ),
      ];
    const end = known.event?.end ?? known.today;
    const made = parseDay(`${from.year}-01-01`) + (from.week - 1) * 7;
    const years = (parseDay(end) - made) / DAYS_PER_YEAR;
    const code = `week ${from.week} of ${from.year}`;
    const margin = {
      value: Math.floor((OUT_YEARS - years) * DAYS_PER_YEAR),
      unit: 'days',
    } as const;
    if (years >= OUT_YEARS)
      return [
        draft(
          'tyreAge',
          {
            ...told,
            margin,
            reason: `Made in ${code}: ten years or more, out by the makers' word.`,
          },
          afterWork(known, {
            work: 'tyres',
            what: `Renew ${gear.gear.name}`,
            record: { at: 'entry', kind: 'fit', component: gear.id },
          }),
        ),
      ];
    const look = years >= LOOK_YEARS ? ': have them looked at every year' : '';
    return [draft('tyreAge', { ...told, margin, reason: `Made in ${code}${look}.` }, MET)];
  });
}
