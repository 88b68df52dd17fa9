import { expect, test } from 'vitest';
import { canGoBack, minuteOf, postBody, postFields, postSchema, readPost } from './post-fields.ts';

const BODY = postBody({
  sendMinute: 390,
  mail: {
    host: 'mail.example.org',
    port: 587,
    encryption: 'required',
    user: 'garage',
    from: 'garage@example.org',
  },
  hasPassword: true,
  hookUrl: 'https://example.org/hook',
});
const NONE = postBody({ sendMinute: 360, mail: null, hasPassword: false, hookUrl: null });
const read = (body: typeof BODY, more: object = {}, password = '') =>
  readPost({ ...postFields(body, 1), ...more }, password);

test('readPost() keeps what stands: password and secret are not asked for again', () => {
  expect(read(BODY)).toEqual({ body: BODY });
  expect(BODY).toMatchObject({ password: { keep: true }, hook: { keep: true } });
  expect(read(NONE)).toEqual({ body: NONE });
  expect(postSchema.parse(BODY)).toEqual(BODY);
});

test('readPost() sends a password that was typed, and none without a login', () => {
  expect(read(BODY, {}, 'long enough')).toHaveProperty('body.password', { set: 'long enough' });
  const without = read(BODY, { login: false }, 'long enough');
  expect(without).toHaveProperty('body.password', null);
  expect(without).toHaveProperty('body.mail.user', null);
});

test('readPost() makes a secret for another address or where one is asked for, and none without an address', () => {
  const url = 'https://example.org/other';
  expect(read(BODY, { hookUrl: url })).toHaveProperty('body.hook', { url });
  expect(read(BODY, { newSecret: true })).toHaveProperty('body.hook', { url: BODY.hookUrl });
  expect(read(BODY, { hookUrl: ' ' })).toHaveProperty('body.hook', null);
  // somebody else saved meanwhile: what is kept by now may be another address
  expect(read(BODY, { baseRevision: 2 })).toHaveProperty('body.hook', { url: BODY.hookUrl });
});

test('readPost() says what a mail server lacks beside its fields', () => {
  const found = read(NONE, { by: 'server', port: '70000', hour: '' });
  expect('problems' in found && Object.keys(found.problems).sort()).toEqual([
    'mail.from',
    'mail.host',
    'mail.port',
    'mail.user',
    'sendMinute',
  ]);
});

test('canGoBack() is false where only the server knew what was replaced or dropped', () => {
  expect(canGoBack(BODY, { ...BODY, sendMinute: 300 })).toBe(true);
  expect(canGoBack(BODY, { ...BODY, password: { set: 'another' } })).toBe(false);
  expect(canGoBack(BODY, { ...BODY, hook: null })).toBe(false);
  expect(canGoBack(NONE, { ...NONE, hook: { url: 'https://example.org' } })).toBe(false);
});

test('minuteOf() reads an hour of a clock of 24 hours', () => {
  expect(['00:00', '06:30', '23:59', '24:00', ''].map(minuteOf)).toEqual([
    0,
    390,
    1439,
    null,
    null,
  ]);
});
