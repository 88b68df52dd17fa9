import { expect, test } from 'vitest';
import { refusalWords } from './refusal-words.ts';

const refused = (refusal: object) => Object.assign(new Error('x'), { data: { refusal } });

test('refusalWords() puts each field error beside its field, once and without its path', () => {
  const trouble = refusalWords(
    refused({
      code: 'badInput',
      field: 'car.name',
      message: 'car.name: is missing; give text',
      fields: [
        { field: 'car.name', message: 'car.name: is missing; give text' },
        { field: 'car.name', message: 'car.name: a second one' },
        { field: 'car.odoDigits', message: 'car.odoDigits: must be at least 4 (was 2)' },
      ],
    }),
  );
  expect(trouble.place).toBe('field');
  expect(trouble.fields).toEqual({
    'car.name': 'Is missing; give text',
    'car.odoDigits': 'Must be at least 4 (was 2)',
  });
});

test('refusalWords() leaves out the last part of a path as well, where a message begins with it', () => {
  const message = 'on: 2026-05-04 has not come yet';
  const trouble = refusalWords(refused({ code: 'afterTomorrow', field: 'entry.on', message }));
  expect(trouble.fields).toEqual({ 'entry.on': '2026-05-04 has not come yet' });
});

test('refusalWords() says a refusal without a field at the form', () => {
  const trouble = refusalWords(
    refused({ code: 'commandReused', field: null, message: 'Send it again.' }),
  );
  expect(trouble).toMatchObject({ place: 'form', fields: {}, message: 'Send it again.' });
});

test('refusalWords() finds the refusal of a request that was not read at all', () => {
  const refusal = { code: 'tooLarge', field: null, message: 'The request is larger than 1024 KB.' };
  const error = Object.assign(new Error('x'), { meta: { responseJSON: { refusal } } });
  expect(refusalWords(error)).toMatchObject({ place: 'form', message: refusal.message, refusal });
});

test('refusalWords() leaves what is gone to the page', () => {
  const trouble = refusalWords(
    refused({ code: 'notFound', field: 'carId', message: 'There is no such car here.' }),
  );
  expect(trouble.place).toBe('page');
});

test('refusalWords() keeps the words of a server that failed', () => {
  const error = Object.assign(new Error('Nothing was saved: look for 1a2b3c4d.'), {
    data: { refusal: null },
  });
  expect(refusalWords(error)).toMatchObject({ message: error.message, refusal: null });
});

test('refusalWords() says how to go on when no answer came', () => {
  expect(refusalWords(new TypeError('fetch failed')).message).toContain('did not answer');
});
