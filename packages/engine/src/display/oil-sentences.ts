import { OIL_ANSWERS } from '../log/oil-notice.ts';
import { type DistanceUnit, KM_PER_UNIT, type VolumeUnit } from '../log/units.ts';
import type { CarOil } from '../oil/oil-answer.ts';
import { dayAhead, weekdayAhead } from './due-words.ts';
import { formatDistance, formatVolume } from './format-quantity.ts';
import { capital, countWord } from './grammar.ts';
import { likelyLevelWords } from './likely-level-words.ts';
import { type OilUnits, oilUseWords, perWords, rateFigure, roadRateOf } from './oil-rate-words.ts';
import { useWords } from './wear-words.ts';

/** What the words need beside the ledger. */
export type OilFacts = OilUnits & {
  /** unit of the odometer */
  unit: DistanceUnit;
  /** civil date the figures speak of */
  asOf: string;
  drySump: boolean;
};

/** Levels that tell a rate apart from chance need use between them. Common practice, no source. */
const APART_KM = 300;
/** Probability from which a rise is worth a word. */
const WATCH = 0.5;
/** Beyond that nobody waits for a distance. */
const FAR_KM = 10_000;

/**
 * The likely level and how well it is known; with too little on record, what would help.
 *
 * @example likelyLevelSentence(oil, facts)
 * // "Likely a little under half, between a quarter and three quarters; 0.4 L below MAX."
 */
export function likelyLevelSentence(oil: CarOil, facts: OilFacts): string {
  if (oil.status === 'none') return tooFewSentence(oil, facts);
  const rough = oil.status === 'weak' ? ' Rough, so far.' : '';
  return `${capital(likelyLevelWords(oil, facts.volumeUnit))}.${rough}`;
}

/** What would make a level and a rate of what is on record. */
export function tooFewSentence({ levelsRead }: CarOil, { unit, drySump }: OilFacts): string {
  const apart = formatDistance(unit === 'mi' ? 200 * KM_PER_UNIT.mi : APART_KM, unit);
  const how = drySump
    ? 'by the car’s own procedure, a dry sump mostly hot and idling,'
    : 'by the same procedure';
  const more =
    levelsRead === 0
      ? `Two readings ${how} with ${apart} between, and what is poured in, would give one`
      : levelsRead === 1
        ? `One more reading ${how}, ${apart} on, would give one`
        : `Two more readings ${how} with ${apart} between would help`;
  return `Too few readings yet for a level and a rate. ${more}.`;
}

/**
 * How much it uses, in a sentence; null where there is too little to say.
 *
 * @example oilUseSentence(oil, facts) // "Uses about 0.33 L per 1,000 km on the road, 0.2 to 0.45. Rough, so far."
 */
export function oilUseSentence(oil: CarOil, facts: OilFacts): string | null {
  const words = oilUseWords(oil, facts);
  if (words === null) return null;
  return `Uses ${words}.${oil.status === 'weak' ? ' Rough, so far.' : ''}`;
}

/** Whether use is told to have risen: an open alert, or a rise that is worth watching. */
export function riseState({ status, alerts, riseProbability }: CarOil): 'risen' | 'watch' | null {
  const last = alerts.at(-1);
  if (last !== undefined && last.closedAtEntry === undefined) return 'risen';
  return status !== 'none' && riseProbability >= WATCH ? 'watch' : null;
}

/**
 * That it uses more than it did, since when, and what to look at first; null where it does not.
 *
 * @example riseSentence(oil, facts)
 * // "Uses more than it did: by the log likely up since about 3 April, 0.2 then, about 0.41 L per 1,000 km now on
 * //   the road. First: is a session or a top-up missing?"
 */
export function riseSentence(oil: CarOil, facts: OilFacts): string | null {
  const state = riseState(oil);
  if (state === null) return null;
  if (state === 'watch') return 'Oil use worth watching: it may be up. The next looks will tell.';
  const since = oil.risenSince === null ? '' : ` since about ${dayAhead(oil.risenSince, facts)}`;
  const now = roadRateOf(oil);
  const rates =
    now === null
      ? ''
      : `, from about ${rateFigure(oil.baselineRate.p50, facts)} to ${rateFigure(now.likely, facts)} ${perWords(facts)} on the road`;
  const answered = oil.notices.find(({ kind }) => kind === 'useRisen')?.answer;
  const first =
    answered?.words === OIL_ANSWERS.really
      ? ''
      : ' First: is a session or a top-up missing from the log?';
  return `Uses more oil than it did: by the log likely up${since}${rates}.${first}`;
}

/**
 * When to look again: by distance, by the odometer, by the day, whichever comes first.
 *
 * @example nextLookSentence(oil, facts)
 * // "Look again within 600 km, by the odometer at 42,180 km, or by Fri 19 June."
 */
export function nextLookSentence({ nextLook, lowNow }: CarOil, facts: OilFacts): string {
  const { km, atOdometerKm, by } = nextLook;
  if (lowNow) return 'Look before driving.';
  const far = km !== null && km > FAR_KM;
  const within = km === null || far ? null : useWords(km, 'km', facts.unit);
  const at = within === null || atOdometerKm === null ? null : odometerWords(atOdometerKm, facts);
  const distance =
    within === null ? null : `within ${within}${at === null ? '' : `, by the odometer at ${at}`}`;
  if (by === null) {
    const woken = 'Not in use: nobody need look every week. Look before it is driven again';
    return distance === null ? `${woken}.` : `${woken}, then ${distance}.`;
  }
  const day = by <= facts.asOf ? 'today' : `by ${weekdayAhead(by, facts)}`;
  if (distance === null) return `Look again ${day}, as every week in use.`;
  return by <= facts.asOf
    ? `Look today, as every week in use; at the latest ${distance}.`
    : `Look again ${distance}, or ${day}.`;
}

/** Rounded down to tens: a look too early is none too late. */
function odometerWords(km: number, { unit }: OilFacts): string {
  const per = KM_PER_UNIT[unit];
  return formatDistance(Math.floor(km / per / 10) * 10 * per, unit);
}

/** Readings that cannot be compared with the car's own procedure; null where there are none. */
export function offProcedureSentence(
  { offProcedure, lastReading }: CarOil,
  { drySump }: OilFacts,
): string | null {
  const count = offProcedure.length;
  if (count === 0) return null;
  const cold = lastReading?.offProcedure === true && lastReading.condition?.state === 'cold';
  const how =
    drySump && cold
      ? 'Last read cold on a dry sump, which shows falsely low'
      : `${countWord(count)} ${count === 1 ? 'reading' : 'readings'} otherwise than by this car’s procedure`;
  return `${how}: listed, not counted beyond the first. Never add oil on such a reading.`;
}

/** That the litres between the marks are assumed, and how to learn them; null where they are on record. */
export function spanSentence(
  { spanAssumed, spanL }: CarOil,
  { volumeUnit }: { volumeUnit: VolumeUnit },
): string | null {
  if (!spanAssumed) return null;
  return `The oil between MIN and MAX is taken to be ${formatVolume(spanL, volumeUnit)}: nobody has said. A wrong one makes the level wrong by as much.`;
}
