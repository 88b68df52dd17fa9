import { addDays } from '@quartermark/engine/calendar';
import { type CarTonight, isInUse } from './car-tonight.ts';
import { putOff } from './due-facts.ts';
import { type FactOf, factId } from './fact.ts';

/** A car in use is looked at every week. Common practice, no source. */
const LOOK_DAYS = 7;

/**
 * What the oil of a car in use asks for: notices that nobody answered, and a weekly look that was missed. What
 * cannot wait is told as urgent, and not a second time here.
 */
export function oilFacts(
  car: CarTonight,
  today: string,
): (FactOf<'oilNotice'> | FactOf<'missedLook'>)[] {
  const oil = car.known?.oil ?? null;
  if (car.known === null || oil === null || !isInUse(car.known.lane.status)) return [];
  const urgent = car.known.urgent?.oil != null;
  const open = oil.notices.filter(({ kind, answer }) => answer === null && !asLow(kind, urgent));
  const notices = open.map(({ id: notice, kind: what, on: since }): FactOf<'oilNotice'> => {
    const id = factId(car.id, 'oilNotice', notice);
    const shared = { ...of(car), id, grade: 0, state: what, quiet: putOff(car.putOffs, id) };
    return { ...shared, kind: 'oilNotice', notice, what, since };
  });
  const asks = urgent || open.some(({ kind }) => kind === 'low' || kind === 'lowSoon');
  return [...notices, ...(asks ? [] : missedLook(car, today))];
}

/** Said already by what is urgent. */
const asLow = (kind: string, urgent: boolean) => urgent && (kind === 'low' || kind === 'lowSoon');

function missedLook(car: CarTonight, today: string): FactOf<'missedLook'>[] {
  const oil = car.known?.oil;
  if (oil == null || oil.nextLook.by === null) return [];
  const last = oil.lastLook;
  const looked = last === null ? null : { on: last.on, due: addDays(last.on, LOOK_DAYS) };
  if (looked !== null && looked.due >= today) return [];
  const id = factId(car.id, 'missedLook', last?.entry ?? 'never');
  const quiet = putOff(car.putOffs, id);
  return [{ ...of(car), id, kind: 'missedLook', grade: 0, state: 'missed', quiet, looked }];
}

const of = ({ id, name }: CarTonight) => ({ car: id, carName: name });
