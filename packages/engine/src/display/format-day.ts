const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/**
 * A civil date in words, always with its year.
 *
 * @param date `YYYY-MM-DD`
 * @throws RangeError for anything else
 * @example formatDay('2026-05-02') // "2 May 2026"
 */
export function formatDay(date: string): string {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  const month = MONTHS[Number(parts?.[2]) - 1];
  if (!parts || month === undefined)
    throw new RangeError(`could not write a day: "${date}", it should be YYYY-MM-DD`);
  return `${Number(parts[3])} ${month} ${Number(parts[1])}`;
}
