import { carInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { carLines } from './car-lines.ts';

const wordsOf = (profile: object) =>
  Object.fromEntries(
    carLines(carInput.parse({ name: 'Tern', unit: 'mi', profile })).map((line) => [
      line.label,
      line.words,
    ]),
  );

test('carLines() says what was chosen in the words of the form, and figures with their unit', () => {
  expect(
    wordsOf({
      status: 'inPieces',
      sump: 'dry',
      oilSpanL: 1.2,
      dipstick: { state: 'hotStopped', minutesAfterStop: 5 },
      airSuspension: false,
    }),
  ).toMatchObject({
    'The odometer counts': 'miles',
    'Where it stands': 'In pieces',
    Sump: 'Dry sump, with its own tank',
    'Oil between MIN and MAX': '1.2 L',
    'The stick is read': 'Hot, some minutes after stopping (5 minutes)',
    'Air suspension': 'No',
  });
});

test('carLines() says what nobody has said', () => {
  expect(wordsOf({})).toMatchObject({
    Sump: 'Not said',
    Octane: 'Not said',
    'Air suspension': 'Not said',
  });
});
