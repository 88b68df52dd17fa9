import { listWords } from '../../display/grammar.ts';
import { spanSentence, tooFewSentence } from '../../display/oil-sentences.ts';
import { roughAmount, TAKE_STEP } from '../../display/take-amount.ts';
import type { EventSort } from '../../log/event-sort.ts';
import type { CarOil } from '../../oil/index.ts';
import type { Analysis } from '../../wear/result.ts';
import { roundAmount } from '../../wear/round-amount.ts';
import type { CarAsked } from '../asked.ts';
import { likelyWords, wayWords } from './amount-words.ts';
import { notMeasured, type RateClass } from './measured-oil.ts';
import { type OilDrive, oilAmount, usedOn } from './oil-amount.ts';
import type { OilToTake } from './result.ts';
import { type DoneThere, type Trip, UNSAID } from './trip.ts';

const BOTTLE = 'Take a bottle along all the same (common practice).';

const WOULD_HELP: Readonly<Record<Exclude<RateClass, 'road'>, string>> = {
  hard: 'How much it uses in hard use was never measured on this car. A look at the stick before and after a session, written down with what is poured in, would tell.',
  run: 'How much it uses on a drag strip was never measured on this car. A look at the stick before and after the runs, written down with what is poured in, would tell.',
};

/**
 * How much oil to take along: what is missing to MAX today, so that the event begins at MAX, what the engine
 * uses there, and on the way. `oilAmount()` says how they are added. Never a rate that was only assumed.
 *
 * @param analysis of the car's book, on its day
 */
export function oilToTake(car: CarAsked, trip: Trip, analysis: Analysis): OilToTake {
  const { book, saidIn } = car;
  const { profile, unit } = book.car;
  const { oil } = analysis;
  const looks = [oil.lastLook?.entry ?? null, oil.lastReading?.entry ?? null];
  const told = {
    grade: profile.oilGrade ?? null,
    approval: profile.oilApproval ?? null,
    evidence: [...new Set(looks)].flatMap((id) => (id === null ? [] : [String(id)])),
  };
  const none = { likelyL: null, cautiousL: null, ...told };
  if (profile.drive === 'electric')
    return { ...none, measured: false, reason: 'It has no engine oil.' };
  const drive = oilDriveOf(trip, trip.there ?? LEAST_THERE[trip.sort]);
  const missing = notMeasured(book, oil, drive);
  if (missing !== null) {
    const units = { distanceUnit: saidIn.distance, volumeUnit: saidIn.volume };
    const facts = { ...units, unit, asOf: book.asOf, drySump: profile.sump === 'dry' };
    const help = missing === 'road' ? tooFewSentence(oil, facts) : WOULD_HELP[missing];
    return { ...none, measured: false, reason: `${help} ${BOTTLE}` };
  }
  if (trip.there === null) return { ...none, measured: true, reason: `${UNSAID} ${BOTTLE}` };
  const { likelyL, cautiousL } = oilAmount(oil, drive);
  return {
    ...told,
    likelyL: roundAmount(likelyL),
    cautiousL: roundAmount(cautiousL),
    measured: true,
    reason: reasonOf(oil, { trip, there: trip.there }, saidIn),
  };
}

/** What has to be measured where nobody said how much it does there. */
const LEAST_THERE: Readonly<Record<EventSort, DoneThere>> = {
  circuit: { roadKm: 0, hardKm: 1, runs: 0 },
  autocross: { roadKm: 0, hardKm: 1, runs: 0 },
  dragStrip: { roadKm: 0, hardKm: 1, runs: 1 },
  roadTrip: { roadKm: 1, hardKm: 0, runs: 0 },
  meet: { roadKm: 1, hardKm: 0, runs: 0 },
};

/** As the ledger counts: a drag-strip day by its runs, and as road where they are not known. */
function oilDriveOf({ sort, wayKm }: Pick<Trip, 'sort' | 'wayKm'>, there: DoneThere): OilDrive {
  const roadKm = there.roadKm + (wayKm ?? 0);
  if (sort !== 'dragStrip') return { roadKm, hardKm: there.hardKm, runs: 0 };
  if (there.runs > 0) return { roadKm, hardKm: 0, runs: there.runs };
  return { roadKm: roadKm + there.hardKm, hardKm: 0, runs: 0 };
}

function reasonOf(
  oil: CarOil,
  { trip, there }: { trip: Trip; there: DoneThere },
  { volume }: CarAsked['saidIn'],
): string {
  const whole = oilAmount(oil, oilDriveOf(trip, there));
  const atPlace = usedOn(oil, oilDriveOf({ sort: trip.sort, wayKm: 0 }, there));
  const onTheWay = usedOn(oil, { roadKm: trip.wayKm ?? 0, hardKm: 0, runs: 0 });
  const part = ({ likelyL }: { likelyL: number }, words: string) =>
    likelyL > 0 ? [`${roughAmount(likelyL, volume, TAKE_STEP.oil)} ${words}`] : [];
  const parts = [
    ...part(whole.missing, 'to MAX now'),
    ...part(atPlace, 'there'),
    ...part(onTheWay, 'on the way there and back'),
  ];
  const made = parts.length === 0 ? '' : `: ${listWords(parts)}`;
  const span = whole.missing.likelyL > 0 ? spanSentence(oil, { volumeUnit: volume }) : null;
  return [
    `${likelyWords(whole, volume, TAKE_STEP.oil)}${made}.`,
    ...wayWords(trip.wayKm),
    ...(oil.status === 'weak' ? ['Rough, so far.'] : []),
    ...(span === null ? [] : [span]),
  ].join(' ');
}
