import type { Letter, LinkOf } from '../letter/letter.ts';
import { linkWords } from '../letter/line-links.ts';
import { addressOf } from './address.ts';
import { CAUTION } from './closing.ts';
import { wrap } from './wrap.ts';

const WIDTH = 72;

/**
 * The letter as plain text: lines of at most 72 characters but for addresses, which stand on lines of their own.
 *
 * @returns lines that end in CRLF, none longer than 998 octets
 * @throws RangeError for a bad address, see `addressOf()`
 * Source of the limits: RFC 5322, section 2.1.1.
 */
export function textPart(letter: Letter, linkOf: LinkOf): string {
  const { heading, lines, rest, standing } = letter;
  const paragraphs = [
    wrap(heading, WIDTH),
    ...(standing === null ? [] : [wrap(standing, WIDTH)]),
    ...lines.map(({ word, text, link }) => [
      ...wrap(`- ${word}. ${text}.`, WIDTH, '  '),
      ...linked(`${linkWords(link)}:`, addressOf(link, linkOf), '  '),
    ]),
    ...(rest === null
      ? []
      : [
          [
            ...wrap(`- ${rest.text}.`, WIDTH, '  '),
            ...linked(`${linkWords(rest.link)}:`, addressOf(rest.link, linkOf), '  '),
          ],
        ]),
    wrap(CAUTION, WIDTH),
    linked(`${linkWords(SETTINGS)}:`, addressOf(SETTINGS, linkOf), ''),
  ];
  return `${paragraphs.map((paragraph) => paragraph.join('\r\n')).join('\r\n\r\n')}\r\n`;
}

const SETTINGS = { to: 'letterSettings' } as const;

const linked = (words: string, address: string, indent: string) => [
  `${indent}${words}`,
  `${indent}${address}`,
];
