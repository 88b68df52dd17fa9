import type { ComponentWear, PositionWear } from '../gear/wear-rate/result.ts';
import type { DistanceUnit } from '../log/units.ts';
import { belowWords, startWords } from './below-words.ts';
import { formatDay } from './format-day.ts';
import { formatDistance } from './format-quantity.ts';
import { capital } from './grammar.ts';
import { floorWords, leftWords, placeName, rateWords, useWords, valueWords } from './wear-words.ts';
import { worstOf } from './worst-place.ts';

type Of = { wear: ComponentWear; unit: DistanceUnit };

/**
 * How a component wears: a sentence for the place that runs out first of each sort (tread, pad, disc),
 * one for a thinner place without a rate, and one for each that rose; then what the figures rest on.
 *
 * @param unit of distances
 * @example wearSentences(wear, 'km')
 * // ["Front left inner pad likely 6.1 mm now, about 0.42 mm a session; 3 mm (common practice) in about 7
 * //   sessions, could be as few as 5."]
 */
export function wearSentences(wear: ComponentWear, unit: DistanceUnit): string[] {
  const of = { wear, unit };
  const spoken = worstOf(wear).flatMap((position) => sentencesOf(position, of));
  const open = wear.useKnown
    ? []
    : [
        'Some of its use is not in the log, so it may have worn further: measure it before you rely on this.',
      ];
  return [...spoken, ...open];
}

/** What one place has to say. */
function sentencesOf(position: PositionWear, of: Of): string[] {
  const below = belowWords(position);
  const start = below === null ? startWords(position, of.wear) : null;
  return [
    position.rise === null ? stateSentence(position, of) : riseSentence(position),
    ...(below === null ? [] : [`${capital(below)}.`]),
    ...(start === null ? [] : [`${capital(start)}.`]),
    ...(position.finding === 'rough' ? ['Rough, so far: measure again after more use.'] : []),
  ];
}

function stateSentence(position: PositionWear, of: Of): string {
  const { finding, line, now, rate, unit } = position;
  if (line === null || now === null || rate === null) return withoutRate(position, of);
  const likely = of.wear.useKnown ? 'likely' : 'likely at most';
  const wears =
    finding === 'flat'
      ? 'no wear to be seen yet'
      : rateWords(rate.likely, unit, of.wear.basis, of.unit);
  const left = toMinima(position, of);
  const start = `${placeName(position)} ${likely} ${valueWords(now.likely, unit)} now, ${wears}`;
  return `${[start, ...left].join('; ')}.`;
}

/** Use left to the greatest minimum, and to the law where that is another one. */
function toMinima({ floors }: PositionWear, { wear, unit }: Of): string[] {
  const [first, ...rest] = floors;
  const law = rest.find(({ whose }) => first?.whose === 'owner' && whose !== 'owner');
  return [first, law].flatMap((floor) => {
    if (floor?.left == null || floor.left.likely === 0) return [];
    return [`${floorWords(floor)} ${leftWords(floor.left, wear.basis, unit)}`];
  });
}

function withoutRate(position: PositionWear, { wear, unit }: Of): string {
  const { last, useSince, finding } = position;
  const since = useSince > 0 ? `, ${useWords(useSince, wear.basis, unit)} ago` : '';
  const measured = `${placeName(position)} ${valueWords(last.value, position.unit)}, measured ${formatDay(last.on)}${since}`;
  const why = finding === 'noUse' ? 'too little use between the measurements' : 'no rate yet';
  const help = wear.neverFitted
    ? 'fit it to a car, so that its use is counted, and measure once more'
    : 'measure once more after some use';
  return `${measured}; ${why}: ${help}.`;
}

function riseSentence(position: PositionWear): string {
  const { rise, unit, what } = position;
  if (rise === null) return '';
  const from = `${valueWords(rise.from.value, unit)} (${rise.from.entry === null ? 'new' : formatDay(rise.from.on)})`;
  const to = `${valueWords(rise.to.value, unit)} (${formatDay(rise.to.on)})`;
  const moved = what === 'tread' ? ', wheels that changed corners,' : '';
  return `${placeName(position)} rose from ${from} to ${to}: measured wrong${moved} or a new part that is not on record. Amend the measurement, or record the fit as new; there is no rate until then.`;
}

/** What stands for what where several sorts of use are counted as one; null where one is. */
export function countedWords({ mixed, basis }: ComponentWear, unit: DistanceUnit): string | null {
  if (!mixed) return null;
  const road = formatDistance(2000, unit);
  const counted = {
    sessions: `${road} of road or 10 launches count as one session`,
    km: `a session counts as ${road}, a launch as ${formatDistance(200, unit)}`,
    launches: `a session or ${road} of road count as 10 launches`,
  }[basis];
  return `Other use is counted in: ${counted} (common practice).`;
}
