import { mayLayAside, urgentKey } from '@quartermark/engine/display';
import type { CarTonight } from './car-tonight.ts';
import { dueFacts, putOff } from './due-facts.ts';
import { type Fact, type FactOf, factId } from './fact.ts';
import { oilFacts } from './oil-facts.ts';
import { verdictFacts } from './verdict-facts.ts';

/**
 * What there is to be told of a car tonight; whether it is told depends on what was said before, see
 * `compose()`. Of a sold car there is nothing, of one that is not in use its papers, its battery, its events,
 * and that it could not be worked out.
 *
 * @param today civil date in the garage's zone
 */
export function factsOfCar(car: CarTonight, today: string): Fact[] {
  if (car.known?.lane.status === 'sold') return [];
  return [
    ...urgentFacts(car),
    ...notWorkedOut(car, today),
    ...verdictFacts(car, today),
    ...dueFacts(car),
    ...oilFacts(car, today),
  ];
}

function urgentFacts(car: CarTonight): FactOf<'urgent'>[] {
  const urgent = car.known?.urgent ?? null;
  if (urgent === null) return [];
  const id = factId(car.id, 'urgent', urgentKey(urgent));
  // what forbids driving is never laid aside
  const quiet = mayLayAside(urgent) ? putOff(car.putOffs, id) : null;
  const { id: carId, name: carName } = car;
  return [{ id, kind: 'urgent', car: carId, carName, grade: 0, state: 'urgent', quiet, urgent }];
}

/** What is of yesterday counts as not worked out: nobody knows whether it still holds. */
function notWorkedOut(car: CarTonight, today: string): FactOf<'notWorkedOut'>[] {
  const { id: carId, name: carName, known, failedSince } = car;
  const stale = known !== null && known.asOf < today ? known.asOf : null;
  const since = failedSince ?? stale;
  if (since === null) return [];
  const id = factId(carId, 'notWorkedOut', since);
  const shared = { id, car: carId, carName, grade: 0, state: 'notWorkedOut', quiet: null };
  return [{ ...shared, kind: 'notWorkedOut', since }];
}
