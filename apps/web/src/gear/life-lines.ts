import { formatAmount } from '@quartermark/engine/display';
import type { ComponentLife, LifeTotal } from '@quartermark/engine/gear';
import type { AmountMeasure } from '@quartermark/engine/log';

export type LifeLine = { label: string; words: string };

const MEASURES: readonly { label: string; measure: AmountMeasure; of: keyof LifeTotals }[] = [
  { label: 'Sessions', measure: 'sessions', of: 'sessions' },
  { label: 'Distance', measure: 'km', of: 'distanceKm' },
  { label: 'Hours', measure: 'hours', of: 'hours' },
  { label: 'Launches', measure: 'launches', of: 'launches' },
];

type LifeTotals = Pick<ComponentLife, 'sessions' | 'distanceKm' | 'hours' | 'launches'>;

/** What a part has behind it: "at least" where not all of it is known. @param unit of distances */
export function lifeLines(life: LifeTotals, unit: 'km' | 'mi'): LifeLine[] {
  return MEASURES.map(({ label, measure, of }) => ({
    label,
    words: totalWords(life[of], measure, unit),
  }));
}

function totalWords({ amount, known }: LifeTotal, measure: AmountMeasure, unit: 'km' | 'mi') {
  if (amount === null) return 'not on record';
  const words = formatAmount(measure, amount, unit);
  return known ? words : `at least ${words}`;
}
