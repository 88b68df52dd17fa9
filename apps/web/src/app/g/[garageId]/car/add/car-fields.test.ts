import { carInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { carDraft, emptyCar, spanProblem } from './car-fields.ts';

const named = { ...emptyCar('km', '2026-05-01'), name: 'Tarn 200' };

test('carDraft() leaves out what was left empty', () => {
  expect(carDraft(named)).toEqual({ name: 'Tarn 200', unit: 'km', profile: {} });
});

test('carDraft() reads a decimal comma in the span', () => {
  const draft = carDraft({ ...named, oilSpan: '1,2', odoDigits: '6', sump: 'dry' });
  expect(carInput.parse(draft)).toEqual({
    name: 'Tarn 200',
    unit: 'km',
    odoDigits: 6,
    profile: { sump: 'dry', oilSpanL: 1.2 },
  });
});

test('spanProblem() says what was typed and how to write it', () => {
  expect(spanProblem('one litre')).toContain('"one litre" is not a number');
  expect(spanProblem(' ')).toBeUndefined();
  expect(spanProblem('0.8')).toBeUndefined();
});
