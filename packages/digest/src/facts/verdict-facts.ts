import { addDays } from '@quartermark/engine/calendar';
import { holdsBack } from '@quartermark/engine/display';
import type { Verdict } from '@quartermark/engine/readiness';
import type { CarTonight } from './car-tonight.ts';
import { putOff } from './due-facts.ts';
import { type FactOf, factId } from './fact.ts';

/** So many days before an event its verdicts are told. */
const EVENT_AHEAD_DAYS = 14;

const GRADE: Readonly<Record<Verdict['word'], number>> = {
  ready: 0,
  canBeReady: 1,
  notOnRecord: 2,
  notInTime: 3,
};

/**
 * How a car stands for the events it goes to, wherever it stands: somebody entered it, so a lay-up that is
 * not over yet is told too.
 */
export function verdictFacts(car: CarTonight, today: string): FactOf<'verdict'>[] {
  if (car.known?.lane.status === 'sold') return [];
  const near = car.events.filter(
    ({ event }) => event.end >= today && event.start <= addDays(today, EVENT_AHEAD_DAYS),
  );
  return near.map(({ event, readiness }) => {
    const id = factId(car.id, 'verdict', event.id);
    const { verdict } = readiness;
    const open = verdict.word === 'ready' ? [] : holdsBack(readiness).map(({ title }) => title);
    return {
      id,
      kind: 'verdict',
      car: car.id,
      carName: car.name,
      grade: GRADE[verdict.word],
      state: verdict.word,
      quiet: putOff(car.putOffs, id),
      event,
      verdict,
      open: [...new Set(open)],
    };
  });
}
