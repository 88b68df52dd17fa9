import { addDays } from '@quartermark/engine/calendar';
import type { DueLine } from '@quartermark/engine/display';
import { type CarTonight, isInUse, runsOutStanding } from './car-tonight.ts';
import { type FactOf, factId, type PutOff, type Quiet } from './fact.ts';

/** An order without a day is waited for so long. Common practice, no source. */
const WAIT_DAYS = 7;

/** What of a car is overdue or due within its warn time. */
export function dueFacts(car: CarTonight): (FactOf<'overdue'> | FactOf<'dueSoon'>)[] {
  if (car.known === null) return [];
  const { lines, lane } = car.known;
  const spoken = isInUse(lane.status) ? lines : lines.filter(runsOutStanding);
  return spoken.flatMap((line): (FactOf<'overdue'> | FactOf<'dueSoon'>)[] => {
    if (line.state === 'overdue') return [overdue(car, line)];
    return line.state === 'dueSoon' ? [dueSoon(car, line)] : [];
  });
}

/** Done anew, it is another fact. */
const subjectOf = ({ id, lastDone }: DueLine) => `${id}:${lastDone ?? 'never'}`;

function overdue(car: CarTonight, line: DueLine): FactOf<'overdue'> {
  const id = factId(car.id, 'overdue', subjectOf(line));
  // something happened to it, or somebody asked for it: more than a limit that ran out
  const grade = line.reasonCode === 'trigger' || line.reasonCode === 'asked' ? 1 : 0;
  const quiet = putOff(car.putOffs, id) ?? ordered(line, grade);
  const since = line.overdueSince;
  return { ...of(car), id, kind: 'overdue', grade, state: 'overdue', quiet, line, since };
}

function dueSoon(car: CarTonight, line: DueLine): FactOf<'dueSoon'> {
  const id = factId(car.id, 'dueSoon', subjectOf(line));
  const grade = line.readingNeeded ? 2 : partsTooLate(line) ? 1 : 0;
  const quiet = putOff(car.putOffs, id) ?? (partsTooLate(line) ? null : ordered(line, grade));
  return { ...of(car), id, kind: 'dueSoon', grade, state: 'dueSoon', quiet, line };
}

const of = ({ id, name, unit }: CarTonight) => ({ car: id, carName: name, unit });

function partsTooLate({ parts }: DueLine): boolean {
  if (parts === null) return false;
  return parts.kind === 'orderBy' ? !parts.feasible : parts.kind === 'ordered' && parts.late;
}

/** Whoever ordered need not be told to: not before the parts should be here. */
function ordered({ parts, leadDays }: DueLine, grade: number): Quiet | null {
  if (parts?.kind !== 'ordered') return null;
  const { on, expected = addDays(on, Math.max(WAIT_DAYS, leadDays)) } = parts.order;
  return { because: 'ordered', until: expected, grade };
}

/** What somebody put off by hand; of several the one that reaches farthest. */
export function putOff(putOffs: readonly PutOff[], id: string): Quiet | null {
  const own = putOffs.filter(({ fact }) => fact === id);
  const [last] = own.sort((a, b) => (a.until < b.until ? 1 : a.until > b.until ? -1 : 0));
  return last ? { because: 'putOff', until: last.until, grade: last.grade } : null;
}
