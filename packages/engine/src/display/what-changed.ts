import { daysBetween } from '../calendar/add.ts';
import type { DistanceUnit, VolumeUnit } from '../log/units.ts';
import {
  type AmountLimitResult,
  type Analysis,
  type ItemResult,
  isAmountLimit,
  type LastLevel,
} from '../wear/result.ts';
import { type CarFacts, type ItemFacts, typedLimit } from './car-facts.ts';
import { likelyWords } from './due-words.ts';
import { flagSentence } from './flag-sentence.ts';
import { formatDay } from './format-day.ts';
import { formatAmount, formatDistance, formatVolume } from './format-quantity.ts';
import { itemWords, type Standing } from './item-words.ts';
import type { LaneItem } from './lane.ts';
import { laneItem } from './lane-item.ts';
import { levelWords } from './level-words.ts';
import { limitsInForce } from './limit-to-speak-of.ts';
import { matterChanges } from './matter-changes.ts';
import { oilChanges } from './oil-changes.ts';
import { itemUrgency } from './urgency-of.ts';

type Facts = CarFacts & {
  volumeUnit: VolumeUnit;
  distanceUnit: DistanceUnit;
  drySump: boolean;
};

/**
 * What became different between two analyses of one car, one short sentence each: what stands open,
 * then the oil, then the items, most urgent first, then the readings, then what was found odd. Empty where nothing a person reads differs.
 *
 * @param before the analysis as it was shown
 * @param after the newer one
 * @param facts names and units of the car, as they are now
 * @example whatChanged(before, after, facts) // ["Brake fluid: 12 → 8 sessions left."]
 */
export function whatChanged(before: Analysis, after: Analysis, facts: Facts): string[] {
  const earlier = new Map(before.items.map((item) => [item.id, item]));
  const names = new Map(facts.items.map(({ id, item }) => [id, item]));
  const standing = ({ laidUp, asOf }: Analysis): Standing => ({
    unit: facts.unit,
    laidUp: laidUp !== null,
    asOf,
  });
  const on = { before: standing(before), after: standing(after) };
  const items = [...after.items]
    .sort((a, b) => itemUrgency(a) - itemUrgency(b))
    .map((now) => {
      const was = earlier.get(now.id);
      const item = names.get(now.id);
      if (!item) return null;
      if (!was) return newItem(now, item, on.after);
      return itemChange({ was, now, item, on });
    });
  const oil = oilChanges(before, after, facts);
  const readings = [
    odometerChange(before, after, facts),
    // where the likely level is told, the reading it counts says nothing more
    oil.length > 0 && after.oil.status !== 'none' ? null : levelChange(before, after, facts),
  ];
  const matters = matterChanges(before, after, facts.unit);
  return [...matters, ...oil, ...items, ...readings, ...newFlags(before, after)].filter(
    (line) => line !== null,
  );
}

function newItem(now: ItemResult, item: ItemFacts, on: Standing): string {
  const { word, detail } = itemWords(now, item, on);
  return `${item.name} is watched from now on: ${lower(word)}${detail === '' ? '' : `, ${detail}`}.`;
}

type Pair = {
  was: ItemResult;
  now: ItemResult;
  item: ItemFacts;
  on: { before: Standing; after: Standing };
};

function itemChange({ was, now, item, on }: Pair): string | null {
  const then = itemWords(was, item, on.before);
  const words = itemWords(now, item, on.after);
  if (now.service !== undefined && now.service !== was.service)
    return `${item.name}: counted from ${formatDay(now.service)}; ${lower(words.word)}.`;
  if (words.mark !== then.mark) {
    const detail = words.detail === '' ? '' : `, ${words.detail}`;
    return `${item.name}: ${lower(then.word)} → ${lower(words.word)}${detail}.`;
  }
  const changes = [
    amountChange(was, now, item, on.after.unit),
    dayChange(laneItem(was, item), laneItem(now, item), on.after),
  ].filter((change) => change !== null);
  return changes.length === 0 ? null : `${item.name}: ${changes.join('; ')}.`;
}

/** A sentence goes on in small letters; a number or a mark stays as it is. */
function lower(word: string): string {
  return word.charAt(0).toLowerCase() + word.slice(1);
}

/** The limit that is used up the furthest of those whose figure reads differently. */
function amountChange(
  was: ItemResult,
  now: ItemResult,
  item: ItemFacts,
  unit: CarFacts['unit'],
): string | null {
  const changes = limitsInForce(now)
    .filter(isAmountLimit)
    .sort((a, b) => b.fraction - a.fraction)
    .map((limit) => {
      const old = was.limits.find(
        (one): one is AmountLimitResult =>
          isAmountLimit(one) && one.measure === limit.measure && one.severe === limit.severe,
      );
      return old ? remainderChange(old, limit, item, unit) : null;
    });
  return changes.find((change) => change !== null) ?? null;
}

function remainderChange(
  old: AmountLimitResult,
  limit: AmountLimitResult,
  item: ItemFacts,
  carUnit: CarFacts['unit'],
): string | null {
  const typed = typedLimit(item, limit.measure, limit.severe);
  const unit = typed?.measure === 'km' ? typed.unit : carUnit;
  const words = (amount: number) => formatAmount(limit.measure, amount, unit);
  const figure = (amount: number) => words(amount).replace(/ .*$/, '');
  const [from, to, end] = !limit.known
    ? [old.accrued, limit.accrued, 'counted, at least']
    : limit.remaining < 0
      ? [Math.max(0, -old.remaining), -limit.remaining, 'over']
      : [old.remaining, limit.remaining, 'left'];
  return words(from) === words(to) ? null : `${figure(from)} → ${words(to)} ${end}`;
}

/** A likely day is told again once it has moved by more than so many days: less is noise. */
const DAYS_WORTH_TELLING = 3;

function dayChange(was: LaneItem, now: LaneItem, on: Standing): string | null {
  const { likely, early = null } = now;
  if (likely === undefined || was.likely === undefined || likely === was.likely) return null;
  const both = likely !== null && was.likely !== null;
  if (both && Math.abs(daysBetween(was.likely ?? '', likely)) <= DAYS_WORTH_TELLING) return null;
  const from = likelyWords({ likely: was.likely, early: was.early ?? null }, on);
  const to = likelyWords({ likely, early }, on);
  return `${from} → ${to.replace('likely by ', '')}`;
}

function odometerChange(before: Analysis, after: Analysis, { unit }: Facts): string | null {
  if (after.odometer === null) return null;
  const to = formatDistance(after.odometer.readingKm, unit);
  if (before.odometer === null) return `Odometer: ${to}.`;
  const from = formatDistance(before.odometer.readingKm, unit);
  return from === to ? null : `Odometer: ${from.replace(/ .*$/, '')} → ${to}.`;
}

function levelChange(before: Analysis, after: Analysis, { volumeUnit }: Facts): string | null {
  const words = (level: LastLevel | null) => {
    if (level === null) return 'not on record';
    if (level.changedSince) return `${levelWords(level)}, oil changed since`;
    if (level.addedSinceL <= 0) return levelWords(level);
    return `${levelWords(level)}, ${formatVolume(level.addedSinceL, volumeUnit)} added since`;
  };
  const [from, to] = [words(before.lastLevel), words(after.lastLevel)];
  return from === to ? null : `Oil on the stick: ${from} → ${to}.`;
}

function newFlags(before: Analysis, after: Analysis): string[] {
  const key = (flag: Analysis['flags'][number]) => JSON.stringify([flag.code, flag.entry, flag.on]);
  const known = new Set(before.flags.map(key));
  return after.flags.filter((flag) => !known.has(key(flag))).map(flagSentence);
}
