import type { Letter, LetterLine, LetterMark, Link, LinkOf } from '../letter/letter.ts';
import { linkWords } from '../letter/line-links.ts';
import { addressOf } from './address.ts';
import { CAUTION } from './closing.ts';
import { wrap } from './wrap.ts';

const WIDTH = 200;

/**
 * Shape and colour of a mark; a word always stands beside it. The colours are seen on white and on black alike
 * (3 to 1 at least), since a mail program sets the paper, light or dark.
 */
export const MARKS: Readonly<Record<LetterMark, { shape: string; colour: string }>> = {
  stop: { shape: '■', colour: '#d55e00' },
  overdue: { shape: '▲', colour: '#d55e00' },
  soon: { shape: '◆', colour: '#b57700' },
  unknown: { shape: '○', colour: '#3d87b8' },
  good: { shape: '●', colour: '#009e73' },
};

const BODY =
  'margin:0 auto;padding:16px;max-width:38em;color-scheme:light dark;font-family:system-ui,sans-serif;font-size:16px;line-height:1.5;overflow-wrap:anywhere';
const LINK = 'color:inherit;display:inline-block;padding:8px 16px 8px 0';
const ITEM = 'margin:0;padding:12px 0;border-top:1px solid #808080';

/**
 * The letter as HTML for plain mail programs: inline styles alone, no script, nothing fetched from anywhere, one
 * column that fits 360 px. It leaves text and paper to the program, so that its dark look holds.
 *
 * @returns lines that end in CRLF, none longer than 998 octets
 * @throws RangeError for a bad address, see `addressOf()`
 */
export function htmlPart(letter: Letter, linkOf: LinkOf): string {
  const { subject, heading, lines, rest, standing } = letter;
  const items = [
    ...lines.flatMap((line) => item(line, linkOf)),
    ...(rest === null
      ? []
      : [
          `<li style="${ITEM}">`,
          ...words(`${rest.text}.`),
          '<br>',
          ...anchor(rest.link, linkOf),
          '</li>',
        ]),
  ];
  const all = [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="color-scheme" content="light dark">',
    '<meta name="supported-color-schemes" content="light dark">',
    '<title>',
    ...words(subject),
    '</title>',
    '</head>',
    `<body style="${BODY}">`,
    '<h1 style="margin:0 0 12px;font-size:18px;line-height:1.3">',
    ...words(heading),
    '</h1>',
    ...(standing === null ? [] : ['<p style="margin:0 0 12px">', ...words(standing), '</p>']),
    ...(items.length === 0
      ? []
      : ['<ul style="list-style:none;margin:0;padding:0">', ...items, '</ul>']),
    '<p style="margin:0;padding:12px 0 0;border-top:1px solid #808080;font-size:14px">',
    ...words(CAUTION),
    '<br>',
    ...anchor({ to: 'letterSettings' }, linkOf),
    '</p>',
    '</body>',
    '</html>',
  ];
  return `${all.join('\r\n')}\r\n`;
}

function item({ mark, word, text, link, more }: LetterLine, linkOf: LinkOf): string[] {
  const { shape, colour } = MARKS[mark];
  return [
    `<li style="${ITEM}">`,
    `<span aria-hidden="true" style="color:${colour}">${shape}</span>`,
    '<strong>',
    ...words(`${word}.`),
    '</strong>',
    ...words(`${text}.`),
    '<br>',
    ...[link, ...more].flatMap((one) => anchor(one, linkOf)),
    '</li>',
  ];
}

function anchor(link: Link, linkOf: LinkOf): string[] {
  return [
    `<a style="${LINK}"`,
    `href="${escaped(addressOf(link, linkOf))}">`,
    ...words(linkWords(link)),
    '</a>',
  ];
}

/** A line break is a blank in HTML, so a long text is broken anywhere it has one. */
const words = (text: string) => wrap(escaped(text), WIDTH);

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text as it may stand between tags and in a quoted attribute. */
export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (character) => ESCAPES[character] ?? character);
}
