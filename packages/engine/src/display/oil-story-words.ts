import type { VolumeUnit } from '../log/units.ts';
import type { StoryEntry, StoryLevel } from '../readers/oil-story.ts';
import { formatVolume } from './format-quantity.ts';
import { capital } from './grammar.ts';
import { levelWords } from './level-words.ts';
import { formatRough } from './rough-number.ts';

/** A level as it was read. @example readLevelWords('none') // "none on the stick" */
export function readLevelWords(level: StoryLevel['level']): string {
  return level === 'none'
    ? levelWords({ fraction: null, mark: 'none' })
    : levelWords({ fraction: level, mark: null });
}

const STATE = { hotIdle: 'hot, idling', hotStopped: 'hot, after stopping', cold: 'cold' } as const;

/** How the stick was read; null where nobody said. @example "hot, 5 minutes after stopping" */
export function conditionWords(condition: StoryEntry['condition']): string | null {
  if (condition === null) return null;
  const { state, minutesAfterStop, oilTempC } = condition;
  const how =
    state === 'hotStopped' && minutesAfterStop !== undefined
      ? `hot, ${minutesAfterStop} ${minutesAfterStop === 1 ? 'minute' : 'minutes'} after stopping`
      : STATE[state];
  return oilTempC === undefined ? how : `${how}, oil at ${oilTempC} °C`;
}

/**
 * What became of the levels of an entry, and why: how well they compare with the car's procedure, and whether
 * they fit what came before. Empty where they count in full.
 */
export function verdictWords(entry: StoryEntry, unit: VolumeUnit): string[] {
  const [first] = entry.levels;
  if (first === undefined) return [];
  return [...lookWords(first, unit), ...(entry.verdict === null ? [] : [VERDICT[entry.verdict]])];
}

const VERDICT: Readonly<Record<NonNullable<StoryEntry['verdict']>, string>> = {
  doubtful: 'Out of line with what came before: counts for little, unless the next one agrees.',
  movedUp:
    'The level itself went up with nothing on record: an unlogged top-up, or fuel or coolant in it?',
  movedDown: 'The level itself went down: oil lost, or a use that is not on record?',
};

function lookWords(level: StoryLevel, unit: VolumeUnit): string[] {
  switch (level.look) {
    case 'on':
      return [];
    case 'poor':
      return ['Read early after the stop, while oil still ran down: counts for less.'];
    case 'corrected': {
      const by = formatRough(Math.abs(level.correctionL), unit);
      const way = level.correctionL < 0 ? 'less' : 'more';
      return [
        `Read at another temperature than by the procedure: taken as ${by} ${way}, and counts for less.`,
      ];
    }
    case 'off':
      return [
        level.counted
          ? 'Off the car’s procedure: counts for little, being the first since a good one.'
          : 'Off the car’s procedure: listed, not counted.',
      ];
  }
}

/** What happened to the oil, in a few words. @example "0.5 L added, to MAX" */
export function storyWords(
  { what, addedL, filledToMax, levels, alert }: StoryEntry,
  unit: VolumeUnit,
): string {
  const read = levels.map(({ level, when }) =>
    when === 'alone' ? readLevelWords(level) : `${readLevelWords(level)} ${when}`,
  );
  const parts = [...ownWords(what, addedL, filledToMax, unit), ...read];
  const words = capital(parts.join(', '));
  if (alert === 'opened') return `${words}; from here on use counts as risen`;
  return alert === 'closed' ? `${words}; from here on use counts as usual again` : words;
}

function ownWords(
  what: StoryEntry['what'],
  addedL: number | null,
  filledToMax: boolean,
  unit: VolumeUnit,
): string[] {
  switch (what) {
    case 'topUp': {
      const poured = addedL === null ? 'oil added' : `${formatVolume(addedL, unit)} added`;
      return [filledToMax ? `${poured} to MAX` : poured];
    }
    case 'change':
      return ['oil changed'];
    case 'repair':
      return ['repair that affects oil use'];
    case 'reading':
    case 'use':
      return [];
  }
}
