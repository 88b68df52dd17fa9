import { expect, test } from 'vitest';
import { accountTrouble } from './account.ts';

test('accountTrouble() puts our own refusal beside its field', () => {
  const refusal = { code: 'setupToken', field: 'token', message: 'This setup token is not valid.' };
  const trouble = accountTrouble(403, { message: refusal.message, refusal });
  expect(trouble.fields).toEqual({ token: 'This setup token is not valid.' });
});

test('accountTrouble() says a wrong password without saying which half was wrong', () => {
  const trouble = accountTrouble(401, { code: 'INVALID_EMAIL_OR_PASSWORD', message: 'Invalid' });
  expect(trouble.message).toContain('do not belong together');
});

test('accountTrouble() asks for patience after too many tries', () => {
  expect(accountTrouble(429, null).message).toContain('Wait a minute');
});

test('accountTrouble() names the status of an answer without words', () => {
  expect(accountTrouble(502, null).message).toContain('502');
});
