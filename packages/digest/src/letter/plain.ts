// control characters, and marks that turn the direction of what follows, which could disguise a name
const HIDDEN = /[\p{Cc}\u00ad\u061c\u200b\u200e\u200f\u202a-\u202e\u2060-\u2069\ufeff]/gu;
// half of a pair cannot be written as UTF-8
const LONE = /\p{Cs}/gu;

/**
 * What a person typed, as one line without hidden characters, cut to so many characters, never through one.
 *
 * @example plain('Brindle 2\r\nBcc: a@b', 60) // "Brindle 2 Bcc: a@b"
 */
export function plain(typed: string, most: number): string {
  const line = typed.replace(/\s+/g, ' ').replace(HIDDEN, '').replace(LONE, '\ufffd').trim();
  const characters = Array.from(line);
  return characters.length <= most ? line : `${characters.slice(0, most - 1).join('')}…`;
}

/** Names of cars, items and events. */
export const NAME_MOST = 60;
/** Sentences that hold what people typed. */
export const SENTENCE_MOST = 160;
