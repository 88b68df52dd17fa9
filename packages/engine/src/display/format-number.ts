/**
 * A number as English text: digits grouped in threes with commas, at most `decimals` decimals, no
 * trailing zeros, never "-0". Fixed on purpose: the machine's own language settings have no say.
 *
 * @param value any finite number
 * @param decimals 0..6
 * @example formatNumber(12070.08, 0) // "12,070"
 */
export function formatNumber(value: number, decimals: number): string {
  if (!Number.isFinite(value))
    throw new RangeError(`could not write a number: ${value}, it should be finite`);
  const [whole = '0', fraction = ''] = Math.abs(value).toFixed(decimals).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+(?!\d))/g, ',');
  const trimmed = fraction.replace(/0+$/, '');
  const digits = trimmed === '' ? grouped : `${grouped}.${trimmed}`;
  return value < 0 && digits !== '0' ? `-${digits}` : digits;
}
