import {
  formatDay,
  formatNumber,
  REQUIREMENT_WORDS,
  WEIGHT_WORDS,
} from '@quartermark/engine/display';
import { NEED_WEIGHTS, type Requirements, WEIGHED_NEEDS } from '@quartermark/engine/log';
import type { VersionLine } from '../forms/version-rows.ts';
import { ROLE_WORDS } from '../items/use-words.ts';

/** The lowest that the oil may stand at the end, as one reads a stick. */
export const FLOORS = [
  { value: '0', words: 'MIN' },
  { value: '0.25', words: 'A quarter' },
  { value: '0.5', words: 'Half' },
  { value: '0.75', words: 'Three quarters' },
] as const;

/** @example floorWords(0.5) // "half" */
export function floorWords(floor: number): string {
  const known = FLOORS.find(({ value }) => Number(value) === floor);
  if (known) return known.value === '0' ? known.words : known.words.toLowerCase();
  return `${formatNumber(floor * 100, 0)} % of the way to MAX`;
}

/** What is asked, in words: a line for each thing the editor can change. */
export function requirementLines(from: Requirements): VersionLine[] {
  const weighed = NEED_WEIGHTS.map((weight) => ({
    label: WEIGHT_WORDS[weight],
    words: listed(
      WEIGHED_NEEDS.filter((need) => from.weights[need] === weight).map(
        (need) => REQUIREMENT_WORDS[need].name,
      ),
    ),
  }));
  return [
    ...weighed,
    { label: 'Limits that block', words: listed(from.limitsOf.map((role) => ROLE_WORDS[role])) },
    { label: 'Must be watched', words: listed(from.watched.map((role) => ROLE_WORDS[role])) },
    { label: 'Oil stays above', words: floorWords(from.oilFloor) },
    { label: 'Odometer read within', words: `${from.odometerDays} days` },
    { label: 'Looked over within', words: `${from.inspectionDays} days` },
    {
      label: 'Loudest allowed',
      words: from.noiseDb === undefined ? 'Not given' : `${from.noiseDb} dB`,
    },
    { label: 'Rule set', words: rulesWords(from) || 'None' },
  ];
}

/** @example rulesWords({ rules: { name: 'Club rules', edition: '2026-01-01' } }) // "Club rules, edition of 1 January 2026" */
export function rulesWords({ rules }: Pick<Requirements, 'rules'>): string {
  return rules === undefined ? '' : `${rules.name}, edition of ${formatDay(rules.edition)}`;
}

const listed = (words: readonly string[]) => (words.length === 0 ? 'nothing' : words.join(', '));
