import { formatCount } from '../../display/format-quantity.ts';
import { listWords } from '../../display/grammar.ts';
import { fuelUnit, roughAmount, TAKE_STEP } from '../../display/take-amount.ts';
import type { VolumeUnit } from '../../log/units.ts';
import { roundAmount } from '../../wear/round-amount.ts';
import type { CarAsked } from '../asked.ts';
import { likelyWords, wayWords } from './amount-words.ts';
import { type FuelClass, type FuelFit, fitFuel, isTold, litresFor } from './fuel-fit.ts';
import { type FilledStretch, fuelStretches } from './fuel-stretches.ts';
import type { FuelToTake } from './result.ts';
import { type DoneThere, type Trip, UNSAID } from './trip.ts';

/** Fewer tell nothing of a car. */
const STRETCHES_LEAST = 4;
/** Of these so many with hard use, for a rate of hard use. */
const HARD_LEAST = 2;
const CANS = 'In cans: approved ones only, as the law and the organiser allow (common practice).';
const APART =
  'The fill-ups do not tell road from hard use. A full tank before and after a day of hard use, each with its odometer, would.';

const SCATTER =
  'What was filled up goes too little with what was driven to say how much it takes. Fill up full, mark it as full, and write the odometer down with it.';

/**
 * How much fuel a car takes for what it does at an event and for the way there and back, by its own fill-ups:
 * at least four stretches between full tanks, two of them with hard use where hard use is asked for.
 */
export function fuelToTake({ book, saidIn }: CarAsked, trip: Trip): FuelToTake {
  const { drive, octane = null } = book.car.profile;
  const none = { likelyL: null, cautiousL: null, octane, evidence: [] };
  if (drive === 'electric') return { ...none, octane: null, reason: 'It takes no fuel.' };
  if (trip.there === null) return { ...none, reason: UNSAID };
  const asked = {
    roadKm: trip.there.roadKm + (trip.wayKm ?? 0),
    hardKm: trip.there.hardKm,
  };
  if (asked.roadKm + asked.hardKm === 0)
    return trip.wayKm === null
      ? { ...none, reason: 'Nobody said how far it is.' }
      : { ...none, likelyL: 0, cautiousL: 0, reason: 'It is not driven for it.' };
  const stretches = fuelStretches(book);
  const few = tooFew(stretches, asked);
  const fit = few === null ? fitFuel(stretches) : null;
  if (fit === null || !tells(fit, asked))
    return { ...none, reason: few ?? (asked.hardKm > 0 ? APART : SCATTER) };
  const { likelyL, cautiousL } = litresFor(fit, asked);
  return {
    likelyL: roundAmount(likelyL),
    cautiousL: roundAmount(cautiousL),
    octane,
    evidence: [...new Set(stretches.flatMap(({ entries }) => entries))],
    reason: reasonOf(fit, trip, trip.there, fuelUnit(saidIn.volume)),
  };
}

type Asked = Record<FuelClass, number>;

/** What would help; null where there is enough. */
function tooFew(stretches: readonly FilledStretch[], { hardKm }: Asked): string | null {
  const how = 'Fill up full, mark it as full, and write the odometer down with it.';
  if (stretches.length < STRETCHES_LEAST)
    return `${countWords(stretches.length)} between full tanks on record, ${STRETCHES_LEAST} are needed to say how much it takes. ${how}`;
  const hard = stretches.filter((one) => one.hardKm > 0).length;
  if (hardKm > 0 && hard < HARD_LEAST)
    return `${countWords(hard)} with hard use between full tanks on record, ${HARD_LEAST} are needed to say how much it takes there. ${how}`;
  return null;
}

const countWords = (count: number) =>
  count === 0 ? 'No stretch' : formatCount(count, 'stretch', 'stretches');

function tells(fit: FuelFit, { roadKm, hardKm }: Asked): boolean {
  return (roadKm === 0 || isTold(fit, 'roadKm')) && (hardKm === 0 || isTold(fit, 'hardKm'));
}

function reasonOf(fit: FuelFit, { wayKm }: Trip, there: DoneThere, unit: VolumeUnit): string {
  const { roadKm, hardKm } = there;
  const whole = litresFor(fit, { roadKm: roadKm + (wayKm ?? 0), hardKm });
  const part = (asked: Asked, words: string) => {
    const { likelyL } = litresFor(fit, asked);
    return likelyL > 0 ? [`${roughAmount(likelyL, unit, TAKE_STEP.fuel)} ${words}`] : [];
  };
  const parts = [
    ...part({ roadKm, hardKm }, 'there'),
    ...part({ roadKm: wayKm ?? 0, hardKm: 0 }, 'on the way there and back'),
  ];
  const stretches = formatCount(fit.stretches.length, 'stretch', 'stretches');
  return [
    `${likelyWords(whole, unit, TAKE_STEP.fuel)}: ${listWords(parts)}, by ${stretches} between full tanks.`,
    ...wayWords(wayKm),
    CANS,
  ].join(' ');
}
