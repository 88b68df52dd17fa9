import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryCar, typedName } from '../../test/arbitrary-car.ts';
import { factsOfCar } from '../facts/facts-of-car.ts';
import { compose } from '../letter/compose.ts';
import type { Letter, LinkOf } from '../letter/letter.ts';
import { SETTINGS_USUAL } from '../letter/settings.ts';
import { htmlPart } from './html-part.ts';
import { textPart } from './text-part.ts';

/** Shrinking a letter takes minutes: the first counterexample has to do. */
const RUNS = { endOnFailure: true };
const TODAY = '2026-06-15';
const octets = (text: string) => new TextEncoder().encode(text).length;
const linkOf: LinkOf = (link) => {
  const asked = Object.entries(link).map(([name, value]): [string, string] => [
    name,
    String(value),
  ]);
  return `https://garage.example/${link.to}?${new URLSearchParams(asked).toString()}`;
};

const letters: fc.Arbitrary<Letter> = fc
  .tuple(typedName, ...['c1', 'c2', 'c3'].map((id) => arbitraryCar(id, TODAY)))
  .map(([name, ...cars]) => {
    const facts = cars.flatMap((car) => factsOfCar(car, TODAY));
    const garage = { name, cars: cars.map(({ id }) => id) };
    const settings = { ...SETTINGS_USUAL, onlyIfNew: false };
    return compose({ today: TODAY, facts, last: [], settings, garage, member: { cars: 'all' } });
  })
  .filter((letter) => letter !== null);

const TAG =
  /<(?:!doctype html|\/?(?:html|head|title|body|h1|p|ul|li|strong|span|a)|br|meta|html lang="en"|meta [a-z-]+="[^"<>]*"(?: content="[^"<>]*")?|(?:body|h1|p|ul|li) style="[^"<>]*"|span aria-hidden="true" style="[^"<>]*"|a style="[^"<>]*"\r\nhref="[^"<>]*")>/g;
const ENTITIES: Record<string, string> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
};

/** The words of an HTML text, as a reader sees them; tags are only those that the writer knows. */
function wordsOf(html: string): string {
  const bare = html.replace(TAG, ' ');
  expect(bare).not.toMatch(/[<>"']/);
  return bare
    .replace(/&(?:amp|lt|gt|quot|#39);/g, (entity) => ENTITIES[entity] ?? '')
    .replace(/\s+/g, ' ');
}

describe('textPart() and htmlPart() of one letter', () => {
  it('keep to lines of 998 octets that end in CRLF', () => {
    fc.assert(
      fc.property(letters, (letter) => {
        for (const part of [textPart(letter, linkOf), htmlPart(letter, linkOf)]) {
          expect(part.endsWith('\r\n')).toBe(true);
          const lines = part.split('\r\n');
          for (const line of lines) {
            expect(octets(line)).toBeLessThanOrEqual(998);
            expect(line).not.toMatch(/[\p{Cc}\p{Cs}]/u);
          }
        }
      }),
      RUNS,
    );
  });

  it('say the same words, and what people typed stays words', () => {
    fc.assert(
      fc.property(letters, (letter) => {
        const html = wordsOf(htmlPart(letter, linkOf));
        const text = textPart(letter, linkOf).replace(/\s+/g, ' ');
        const said = [letter.heading, ...letter.lines.flatMap(({ word, text: it }) => [word, it])];
        for (const words of [...said, letter.standing ?? '', letter.rest?.text ?? '']) {
          expect(html).toContain(words.replace(/\s+/g, ' '));
          expect(text).toContain(words.replace(/\s+/g, ' '));
        }
      }),
      RUNS,
    );
  });

  it('fetch nothing, run nothing, and have a subject of one line', () => {
    fc.assert(
      fc.property(letters, (letter) => {
        const html = htmlPart(letter, linkOf);
        expect(html).not.toMatch(/<(script|img|link|style|iframe|form|svg|object|video)\b/i);
        // it knows no tag or attribute that fetches anything
        wordsOf(html);
        expect(letter.subject).not.toMatch(/[\p{Cc}\p{Cs}\u202a-\u202e]/u);
        expect(Array.from(letter.subject).length).toBeLessThanOrEqual(110);
      }),
      RUNS,
    );
  });
});
