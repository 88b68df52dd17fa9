const SEPARATORS = /[,;\n|]+|\s+(?:or|and)\s+/i;

/** "ACEA A3/B4" and "acea a3-b4" are the same: letters and digits alone. */
const bare = (text: string) => text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');

/** Words and numbers; a number keeps its point, so that 1.2 is not 1 and 2. */
const words = (text: string) =>
  text.toLowerCase().match(/\p{L}+\p{N}*|\p{N}+(?:\.\p{N}+)*/gu) ?? [];

const itemsOf = (text: string) =>
  text
    .split(SEPARATORS)
    .map((item) => item.trim())
    .filter((item) => bare(item) !== '');

/**
 * Which approvals that are asked for are not among those given, in the words of the one who asked. Compared
 * loosely: blanks, dots, strokes and case do not count, and one class of several under one name is found
 * ("ACEA C3" in "ACEA A3/B4, C3").
 *
 * @param asked one, or several with commas, each of which is asked for
 * @param given whatever the container says
 * @example missingApprovals('ACEA C3', 'API SP, ACEA C2/C3') // []
 */
export function missingApprovals(asked: string, given: string): string[] {
  const items = [...itemsOf(given), ...given.split('/')].map(bare);
  const known = new Set(words(given));
  return itemsOf(asked).filter((one) => {
    const wanted = bare(one);
    if (items.some((item) => isWithin(item, wanted))) return false;
    const parts = words(one);
    return parts.length < 2 || !parts.every((part) => known.has(part));
  });
}

/** Within, and no longer number: 415 is not within 4151. */
function isWithin(item: string, wanted: string): boolean {
  for (let at = item.indexOf(wanted); at >= 0; at = item.indexOf(wanted, at + 1)) {
    const [before, after] = [item[at - 1] ?? '', item[at + wanted.length] ?? ''];
    const runsOn = /\d$/.test(wanted) && /\d/.test(after);
    const runsIn = /^\d/.test(wanted) && /\d/.test(before);
    if (!runsOn && !runsIn) return true;
  }
  return false;
}
