import type { MeasuredReading } from '../gear/result.ts';
import type { PositionWear, UseLeft, WearBasis, WearFloor } from '../gear/wear-rate/result.ts';
import type { DistanceUnit } from '../log/units.ts';
import { KM_PER_UNIT } from '../log/units.ts';
import { formatNumber } from './format-number.ts';
import { formatCount, formatDistance } from './format-quantity.ts';
import { capital } from './grammar.ts';

const WHAT: Readonly<Record<MeasuredReading['what'], string>> = {
  tread: 'tread',
  padInner: 'inner pad',
  padOuter: 'outer pad',
  disc: 'disc',
};

/** A measured place in words. @example placeWords(position) // "front left inner pad" */
export function placeWords({ what, where, groove }: PositionWear): string {
  const [corner = ''] = where.split(', ');
  return `${corner} ${WHAT[what]}${groove === null ? '' : `, ${groove}`}`;
}

/** A measured value with its unit. @example valueWords(6.13, 'mm') // "6.1 mm" */
export function valueWords(value: number, unit: 'mm' | 'g'): string {
  return `${formatNumber(value, unit === 'mm' ? 1 : 0)} ${unit}`;
}

/** Whose minimum it is, as it stands in brackets. */
export const WHOSE: Readonly<Record<WearFloor['whose'], string>> = {
  owner: 'your own value',
  lawEu: 'law, EU',
  lawUs: 'law, US',
  practice: 'common practice',
};

/** A minimum and whose it is. @example floorWords({ whose: 'lawUs', mm: 1.5875 }) // "2/32 in (1.59 mm; law, US)" */
export function floorWords({ whose, mm }: WearFloor): string {
  if (whose === 'lawUs') return `2/32 in (${formatNumber(mm, 2)} mm; ${WHOSE[whose]})`;
  return `${formatNumber(mm, 2)} mm (${WHOSE[whose]})`;
}

/** Of launches, and kilometres or miles, one wears too little to be told. */
const RATE_OF = {
  sessions: { amount: 1, words: () => 'a session' },
  km: { amount: 1000, words: (unit: DistanceUnit) => `per 1,000 ${unit}` },
  launches: { amount: 10, words: () => 'in 10 launches' },
} as const;

/**
 * Wear per use in words. @param rate mm or g per unit of the basis
 * @example rateWords(0.42, 'mm', 'sessions', 'km') // "about 0.42 mm a session"
 */
export function rateWords(
  rate: number,
  valueUnit: 'mm' | 'g',
  basis: WearBasis,
  unit: DistanceUnit,
): string {
  const { amount, words } = RATE_OF[basis];
  const per = rate * amount * (basis === 'km' ? KM_PER_UNIT[unit] : 1);
  const decimals = per >= 0.01 ? 2 : 3;
  const number = per < 0.0005 ? 'less than 0.001' : `about ${formatNumber(per, decimals)}`;
  return `${number} ${valueUnit} ${words(unit)}`;
}

/** Beyond that nobody plans. */
const MOST: Readonly<Record<WearBasis, number>> = { sessions: 200, km: 200_000, launches: 1000 };

/**
 * Use in words, rounded down: whole counts, distances to two digits.
 *
 * @example useWords(7.6, 'sessions', 'km') // "7 sessions"
 */
export function useWords(amount: number, basis: WearBasis, unit: DistanceUnit): string {
  if (basis === 'sessions') return formatCount(Math.floor(amount), 'session');
  if (basis === 'launches') return formatCount(Math.floor(amount), 'launch', 'launches');
  const shown = amount / KM_PER_UNIT[unit];
  const step = 10 ** Math.max(1, Math.floor(Math.log10(Math.max(shown, 1))) - 1);
  return formatDistance(Math.floor(shown / step) * step * KM_PER_UNIT[unit], unit);
}

function few(amount: number, basis: WearBasis, unit: DistanceUnit): string {
  const least = basis === 'km' ? 10 * KM_PER_UNIT[unit] : 1;
  if (amount >= least) return useWords(amount, basis, unit);
  return basis === 'km' ? `less than 10 ${unit}` : `less than one ${basis.replace(/e?s$/, '')}`;
}

/**
 * How much use is left until a minimum; it is not reached yet.
 *
 * @example leftWords({ likely: 7.2, low: 5.4, high: 11 }, 'sessions', 'km')
 * // "in about 7 sessions, could be as few as 5"
 */
export function leftWords({ likely, low }: UseLeft, basis: WearBasis, unit: DistanceUnit): string {
  const most = MOST[basis];
  if (likely === null) {
    if (low < 1) return 'when cannot be said yet';
    return `not before ${low > most ? 'more than' : 'about'} ${useWords(Math.min(low, most), basis, unit)}`;
  }
  if (likely > most) return `in more than ${useWords(most, basis, unit)}`;
  const soon = few(likely, basis, unit);
  const start = soon.startsWith('less') ? `in ${soon}` : `in about ${soon}`;
  if (low <= 0) return `${start}, could be there already`;
  const early = few(low, basis, unit);
  if (early === soon) return start;
  if (early.startsWith('less')) return `${start}, could be ${early}`;
  // "7 sessions, could be as few as 5"
  return `${start}, could be as few as ${early.replace(/ (sessions?|launch(es)?)$/, '')}`;
}

/** The name of a place at the beginning of a sentence. */
export function placeName(position: PositionWear): string {
  return capital(placeWords(position));
}
