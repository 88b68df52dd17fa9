const SINGULAR_ENDINGS = /(?:ss|us|is)$/i;

/** True where a name reads as more than one thing: "Front pads", "Oil and filter". */
export function readsAsPlural(name: string): boolean {
  if (/ and | & /.test(name)) return true;
  const last = name.trim().replace(/\s*\([^)]*\)$/, '');
  return /[a-z]s$/i.test(last) && !SINGULAR_ENDINGS.test(last);
}

/** "a", "a and b", "a, b and c"; what goes beyond `most` is counted: "a, b and 4 more". */
export function listWords(names: readonly string[], most = 3): string {
  const shown = names.length > most ? names.slice(0, most - 1) : names;
  const rest = names.length - shown.length;
  const parts = rest > 0 ? [...shown, `${rest} more`] : [...shown];
  const last = parts.pop();
  if (last === undefined) return '';
  return parts.length === 0 ? last : `${parts.join(', ')} and ${last}`;
}

const SMALL = [
  'No',
  'One',
  'Two',
  'Three',
  'Four',
  'Five',
  'Six',
  'Seven',
  'Eight',
  'Nine',
  'Ten',
  'Eleven',
  'Twelve',
];

/** A whole number that begins a sentence, in words up to twelve. @example countWord(2) // "Two" */
export function countWord(count: number): string {
  return SMALL[count] ?? String(count);
}

/** The text with a capital first letter, other letters as they were. */
export function capital(text: string): string {
  const [first = '', ...rest] = Array.from(text);
  return first.toUpperCase() + rest.join('');
}
