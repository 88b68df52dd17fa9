import type { ComponentWear, PositionWear, WearFloor } from '../gear/wear-rate/result.ts';
import { formatNumber } from './format-number.ts';
import { valueWords, WHOSE } from './wear-words.ts';

const ROUNDING = 1e-9;

/** The least a place may be by now: what is likely, or what was measured where that is less. */
export function thinnest({ now, last }: PositionWear): number {
  return Math.min(now?.likely ?? last.value, last.value);
}

/** The minima a place has fallen below. */
export function floorsBelow(position: PositionWear): WearFloor[] {
  const value = thinnest(position);
  return position.floors.filter(({ mm }) => value < mm - ROUNDING);
}

/**
 * What a place has fallen below, the law before the owner's own; null where it is above all.
 *
 * @example belowWords(position) // "below your own least, 3 mm"
 */
export function belowWords(position: PositionWear): string | null {
  const below = floorsBelow(position);
  const of = (whose: WearFloor['whose']) => below.find((floor) => floor.whose === whose);
  const hasUs = position.floors.some(({ whose }) => whose === 'lawUs');
  if (of('lawEu') && of('lawUs'))
    return 'below the legal floor: 1.6 mm in the EU, 2/32 in in the US';
  if (of('lawEu') && hasUs)
    return 'below the legal floor of the EU, 1.6 mm; just above 2/32 in, that of the US';
  if (of('lawEu')) return 'below the legal floor of the EU, 1.6 mm';
  if (of('lawUs')) return 'below the legal floor of the US, 2/32 in';
  const own = of('owner');
  if (own) return `below your own least, ${formatNumber(own.mm, 2)} mm`;
  const practice = of('practice');
  return practice ? `below the ${formatNumber(practice.mm, 2)} mm of common practice` : null;
}

/** Pads that are too thin to begin a circuit day with; null where they are not, or do no circuits. */
export function startWords(
  position: PositionWear,
  { startOfDay, basis }: Pick<ComponentWear, 'startOfDay' | 'basis'>,
): string | null {
  if (startOfDay === null || basis !== 'sessions') return null;
  if (!position.what.startsWith('pad') || thinnest(position) >= startOfDay.mm) return null;
  return `below ${valueWords(startOfDay.mm, 'mm')}, what a circuit day should begin with (${WHOSE[startOfDay.whose]})`;
}
