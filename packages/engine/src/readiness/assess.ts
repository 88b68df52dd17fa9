import { FIXED_NEEDS, type NeedWeight, type Requirements } from '../log/requirements.ts';
import type { Analysis } from '../wear/result.ts';
import type { CarAcceptance, CarAsked, EventAsked } from './asked.ts';
import type { Draft } from './draft.ts';
import { type Known, knownOf } from './known.ts';
import { type CarReadiness, NEED_STATUSES, type Need, WORK_KINDS } from './result.ts';
import { RULES } from './rules/index.ts';
import { verdictOf } from './verdict.ts';

/**
 * Says of one car whether it is ready for an event, until its end and the way home, or for the road
 * today: what is asked, what of it is met, what is missing and what to do about it. Pure; advice by
 * the log, never a certificate.
 *
 * @param car everything known of the car on its book's day
 * @param event null: the road, today
 * @param requirements what is asked: the event's own, else the garage's, else `usualRequirements()`
 * @param analysis of the car's book, where it was worked out before; for the road alone
 * @throws RangeError for a date that does not exist
 * @example carReadiness(car, null, usualRequirements('road')).verdict.word
 */
export function carReadiness(
  car: CarAsked,
  event: EventAsked,
  requirements: Requirements,
  analysis?: Analysis,
): CarReadiness {
  return assess(knownOf(car, event, requirements, analysis));
}

/** The rules alone, over what is known already. */
export function assess(known: Known): CarReadiness {
  const { car, event, requirements } = known;
  const needs = RULES.flatMap((rule) => rule(known))
    .flatMap((one) => weighed(one, requirements, car.acceptances))
    .sort(worstFirst);
  return {
    car: car.book.car.id,
    use: known.use,
    event: event?.id ?? null,
    verdict: verdictOf(needs, known.today),
    needs,
  };
}

const isFixed = (kind: Need['kind']) => FIXED_NEEDS.some((fixed) => fixed === kind);

/** Nobody takes these upon himself: what forbids driving, and the fasteners of a wheel. */
const mayAccept = ({ kind }: Draft) => !isFixed(kind) && kind !== 'torque';

function weighed(
  { adviceOnly, ...one }: Draft,
  requirements: Requirements,
  acceptances: readonly CarAcceptance[],
): Need[] {
  const weight = weightOf(one, requirements);
  if (weight === 'off') return [];
  const open = one.status !== 'met';
  const given =
    open && mayAccept(one) ? acceptances.find(({ need }) => need === one.id) : undefined;
  return [
    {
      ...one,
      weight: adviceOnly ? 'advice' : weight,
      mayAccept: open && mayAccept(one),
      accepted: given
        ? {
            acceptanceId: given.acceptanceId,
            by: given.by,
            on: given.on,
            because: given.because,
          }
        : null,
    },
  ];
}

function weightOf({ kind }: Draft, { weights }: Requirements): NeedWeight {
  return isFixed(kind) ? 'blocking' : weights[kind as keyof typeof weights];
}

const placeOf = ({ status, accepted }: Need) =>
  accepted === null ? NEED_STATUSES.indexOf(status) : 0.5;
const workPlace = ({ remedy }: Need) =>
  remedy === null ? WORK_KINDS.length : WORK_KINDS.indexOf(remedy.work);

/** Blocking before advice, the worst first, then in the order of work; the rules' own order beyond that. */
function worstFirst(a: Need, b: Need): number {
  if (a.weight !== b.weight) return a.weight === 'blocking' ? -1 : 1;
  return placeOf(b) - placeOf(a) || workPlace(a) - workPlace(b);
}
