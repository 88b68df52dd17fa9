/**
 * Content lines of iCalendar: text escaped, long lines folded.
 * Source: RFC 5545, sections 3.1 (lines, folding) and 3.3.11 (text).
 */

/** Octets of a line without its break. */
const LINE_OCTETS = 75;

/** A text value: no character of it ends the value, the property or the line. */
export function textValue(text: string): string {
  return text
    .replace(/\r\n?/g, '\n')
    .replace(/[^\P{Cc}\n\t]/gu, '')
    .replace(/\p{Cs}/gu, '\ufffd')
    .replace(/[\\;,]/g, '\\$&')
    .replace(/\n/g, '\\n');
}

/**
 * A line folded to at most 75 octets, never inside a character: a break and a blank, which the reader takes
 * away again.
 *
 * @returns without the break at its end
 * @example folded(`SUMMARY:${'x'.repeat(70)}`) // 75 octets, CRLF, a blank and the rest
 */
export function folded(line: string): string {
  const parts: string[] = [];
  let part = '';
  let octets = 0;
  for (const character of line) {
    const more = octetsOf(character);
    if (octets + more > LINE_OCTETS) {
      parts.push(part);
      // the blank counts
      part = ' ';
      octets = 1;
    }
    part += character;
    octets += more;
  }
  return [...parts, part].join('\r\n');
}

/** Octets of one character in UTF-8. Source: RFC 3629, section 3. */
function octetsOf(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}
