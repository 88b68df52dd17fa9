import { expect, test } from 'vitest';
import { likelyWords, roughWords } from './amount-words.ts';

test('roughWords() says less than a step for what is less than half of one', () => {
  expect(roughWords(0.04, 'l', 0.1)).toBe('less than 0.1 L');
  expect(roughWords(0.06, 'l', 0.1)).toBe('0.1 L');
  expect(roughWords(1.9, 'usGal', 1)).toBe('1 US gal');
});

test('likelyWords() rounds what is rarely exceeded up, but by no step that rounding alone would make', () => {
  const words = likelyWords({ likelyL: 1.42, cautiousL: 2.03 }, 'l', 0.1);
  expect(words).toBe('Likely 1.4 L, no more than 2.1 L nine times in ten');
  expect(likelyWords({ likelyL: 0.3, cautiousL: 0.1 + 0.2 }, 'l', 0.1)).toMatch(/than 0\.3 L/);
});
