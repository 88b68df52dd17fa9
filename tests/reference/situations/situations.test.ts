import { analyseBook } from '@quartermark/engine';
import {
  carSentences,
  forecastSentence,
  hardUseSentence,
  itemWords,
  nowSentence,
} from '@quartermark/engine/display';
import { describe, expect, test } from 'vitest';
import { bookOf, type Situation, situations } from './index.ts';
import { wrongWith } from './said-as.ts';

// The sentences are the hand's, and so are the figures in them; each situation says what they rest on.

function asked(situation: Situation) {
  const book = bookOf(situation);
  const analysis = analyseBook(book);
  const [item] = book.items;
  const [result] = analysis.items;
  if (!item || !result) throw new RangeError('a situation has one item');
  const on = { unit: book.car.unit, laidUp: analysis.laidUp !== null, asOf: book.asOf };
  const { word, detail } = itemWords(result, item, on);
  const facts = { unit: book.car.unit, items: [{ id: item.id, item }] };
  return {
    says: detail === '' ? word : `${word}, ${detail}`,
    because: forecastSentence(result, { ...on, item }),
    beside: [
      ...carSentences(analysis, facts),
      ...result.limits.flatMap((limit) => nowSentence(limit, { unit: 'km', item }) ?? []),
      ...(result.severe && item.severe
        ? [hardUseSentence(result.severe, item.severe, book.car.unit)]
        : []),
    ],
  };
}

describe.each(situations)('$heading', (situation) => {
  const { says, because, asOf } = situation;
  const year = asOf.slice(0, 4);
  const said = asked(situation);

  test('itemWords() says it as written', () => {
    expect(wrongWith(said.says, says, year)).toBeNull();
  });

  test('forecastSentence() explains it as written', () => {
    if (because === null) expect(said.because).toBeNull();
    else expect(wrongWith(said.because ?? 'nothing', because, year)).toBeNull();
  });
});

const withMore = situations.filter(({ also = [] }) => also.length > 0);

test.each(withMore)('beside "$heading" stands what is written', (situation) => {
  const { beside } = asked(situation);
  for (const sentence of situation.also ?? [])
    expect(
      beside.some((one) => wrongWith(one, sentence, situation.asOf.slice(0, 4)) === null),
      `${sentence}\nis none of\n${beside.join('\n')}`,
    ).toBe(true);
});

describe('wrongWith()', () => {
  const year = '2026';

  test('wrongWith() takes a day and a figure that are near, and no other', () => {
    const written = 'About {220 ±10} km, by {30 July ±4}.';
    expect(wrongWith('About 212 km, by 2 August.', written, year)).toBeNull();
    expect(wrongWith('About 212 km, by 4 August.', written, year)).toMatch(/4 August is not/);
    expect(wrongWith('About 1,212 km, by 30 July.', written, year)).toMatch(/1,212 is not 220/);
    expect(wrongWith('About 220 km, by 30 July 2027.', written, year)).toMatch(/2027 is not/);
    expect(wrongWith('About 30 July km, by 30 July.', written, year)).not.toBeNull();
  });

  test('wrongWith() takes no other words', () => {
    expect(wrongWith('Due soon', 'Overdue', year)).not.toBeNull();
    expect(wrongWith('By 20 June, or later', 'By {20 June ±4}', year)).not.toBeNull();
  });
});
