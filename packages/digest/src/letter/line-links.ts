import { addDays, weekday } from '@quartermark/engine/calendar';
import type { Fact } from '../facts/fact.ts';
import type { Link } from './letter.ts';

/** Where a line leads: what there is to do about it comes as a form, filled in and not sent. */
export function linkOfFacts(facts: readonly Fact[]): Link {
  const [first] = facts as [Fact, ...Fact[]];
  const { car } = first;
  switch (first.kind) {
    case 'urgent':
    case 'notWorkedOut':
      return { to: 'car', car };
    case 'verdict':
      return { to: 'event', event: first.event.id };
    case 'overdue':
    case 'dueSoon':
      return { to: 'serviceForm', car, items: itemsOf(facts) };
    case 'oilNotice':
      return { to: 'carOil', car };
    case 'missedLook':
      return { to: 'oilCheckForm', car };
  }
}

/** Items can be ordered for and put off; the forms propose, and write nothing by being opened. */
export function furtherLinks(facts: readonly Fact[], today: string): Link[] {
  const [first] = facts as [Fact, ...Fact[]];
  if (first.kind !== 'overdue' && first.kind !== 'dueSoon') return [];
  const { car, line } = first;
  const toOrder = line.leadDays > 0 && line.parts?.kind === 'orderBy';
  const putOff: Link = {
    to: 'putOffForm',
    facts: facts.map(({ id }) => id),
    until: comingSaturday(today),
  };
  return [
    ...(toOrder ? [{ to: 'orderForm', car, items: itemsOf(facts) } satisfies Link] : []),
    putOff,
  ];
}

function itemsOf(facts: readonly Fact[]): string[] {
  return facts.flatMap((fact) =>
    fact.kind === 'overdue' || fact.kind === 'dueSoon' ? [fact.line.id] : [],
  );
}

const SATURDAY = 6;

/** Today where it is a Saturday. @example comingSaturday('2026-06-15') // '2026-06-20' */
export function comingSaturday(today: string): string {
  return addDays(today, (SATURDAY - weekday(today) + 7) % 7);
}

const WORDS: Readonly<Record<Link['to'], string>> = {
  car: 'Open the car’s page',
  carOil: 'Open the car’s oil page',
  event: 'Open the event',
  serviceForm: 'Record the work',
  oilCheckForm: 'Record a look at the oil',
  orderForm: 'Ordered',
  putOffForm: 'After Saturday',
  dueList: 'All that is due',
  letterSettings: 'What this letter says, and when',
};

export const linkWords = ({ to }: Link): string => WORDS[to];
