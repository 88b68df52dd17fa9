import type { DistanceUnit, VolumeUnit } from '../log/units.ts';
import type { Analysis } from '../wear/result.ts';
import { fromMaxWords, levelFractions, likelyStop } from './likely-level-words.ts';
import { nextLookSentence, type OilFacts, tooFewSentence } from './oil-sentences.ts';
import { OIL_NOTICE_WORDS, oilStopOf, oilStopSentence } from './oil-stop-sentence.ts';

type Facts = {
  unit: DistanceUnit;
  distanceUnit: DistanceUnit;
  volumeUnit: VolumeUnit;
  drySump: boolean;
};

/**
 * What became different of a car's oil by a look, a bottle or a change, what cannot wait first: where the level
 * likely is now, when to look again, and what newly wants looking into. Empty where no such entry came.
 */
export function oilChanges(before: Analysis, after: Analysis, told: Facts): string[] {
  const facts: OilFacts = { ...told, asOf: after.asOf };
  const stop = oilStopOf(after.oil);
  const stopped = stop !== null && stop !== oilStopOf(before.oil);
  const known = new Set(before.oil.notices.map(({ id }) => id));
  const fresh = after.oil.notices.filter(({ id, kind }) => !known.has(id) && kind !== 'low');
  const sentence = stopped ? oilStopSentence(after.oil) : null;
  return [
    ...(sentence === null ? [] : [sentence]),
    ...fresh.map(({ kind }) => `${OIL_NOTICE_WORDS[kind]}: see the car’s oil page.`),
    ...(looked(before, after) ? levelNow(after, facts, stop !== null) : []),
  ];
}

/** An entry about the oil came, went, or was put right. */
function looked({ oil: was }: Analysis, { oil: now }: Analysis): boolean {
  return (
    was.lastLook?.entry !== now.lastLook?.entry ||
    was.levelsRead !== now.levelsRead ||
    was.lastReading?.level !== now.lastReading?.level
  );
}

function levelNow({ oil }: Analysis, facts: OilFacts, stopped: boolean): string[] {
  if (oil.lastLook === null) return [];
  if (oil.status === 'none') return [`Oil level: ${lower(tooFewSentence(oil, facts))}`];
  const { likely } = levelFractions(oil);
  const litres = fromMaxWords(oil.level.p50, facts.volumeUnit);
  const stop = likelyStop(likely);
  const level = `Oil level now likely ${stop}${stop === litres ? '' : `, ${litres}`}.`;
  return stopped ? [level] : [`${level} ${nextLookSentence(oil, facts)}`];
}

const lower = (words: string) => words.charAt(0).toLowerCase() + words.slice(1);
