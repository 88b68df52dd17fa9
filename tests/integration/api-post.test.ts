import { randomUUID } from 'node:crypto';
import { connect, listen, OUTBOX_CHANNEL, withGarage } from '@quartermark/db';
import { sql as query } from 'drizzle-orm';
import postgres from 'postgres';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Caller, type Home, home, OWNER, refused } from '../support/api-house.ts';
import { joinMember } from '../support/api-stranger.ts';
import { keepLetter } from '../support/as-the-worker.ts';
import { eventually } from '../support/eventually.ts';

let at: Home;
let owner: postgres.Sql;
let admin: Caller;
let member: Caller;
beforeAll(async () => {
  at = await home('api post');
  owner = postgres(at.database.ownerUrl, { max: 1, onnotice: () => {} });
  admin = await joinMember(at, 'admin@club.example');
  member = await joinMember(at, 'member@club.example');
  await owner`update member set role = 'admin'
    where user_id = (select id from "user" where email = 'admin@club.example')`;
});
afterAll(async () => {
  await owner.end();
  await at.close();
});

const PASSWORD = 'grey-heron-at-dusk';
const SERVER = {
  host: 'mail.club.example',
  port: 587,
  encryption: 'required' as const,
  user: 'garage',
  from: 'garage@club.example',
};
const HOOK = 'https://hooks.club.example/in';
const keep = { keep: true as const };
const command = () => ({ garageId: at.garageId, commandId: randomUUID() });
const here = () => ({ garageId: at.garageId });

type Change = Parameters<Caller['post']['change']>[0];
/** Changes what is given of the garage's post, as it stands now. */
async function change(given: Partial<Change>, by = at.me) {
  const {
    revision: baseRevision,
    sendMinute,
    mail,
    hasPassword,
    hookUrl,
  } = await by.post.view(here());
  const password = hasPassword ? keep : null;
  const hook = hookUrl === null ? null : keep;
  return by.post.change({ ...command(), baseRevision, sendMinute, mail, password, hook, ...given });
}
const stored = async () => (await owner`select * from post_setting`)[0];

test('the owner and administrators set the post; a member neither sees nor sets it', async () => {
  expect(await at.me.post.view(here())).toMatchObject({
    sendMinute: 360,
    mail: null,
    hasPassword: false,
    hookUrl: null,
    revision: 0,
  });
  await change({ sendMinute: 330 });
  await change({ sendMinute: 345 }, admin);
  expect((await at.me.post.view(here())).sendMinute).toBe(345);
  for (const asking of [
    () => member.post.view(here()),
    () => member.post.change({ ...command(), ...EMPTY }),
    () => member.post.test(command()),
    () => member.letter.sent(here()),
  ])
    expect((await refused(asking())).code).toBe('notAllowed');
  expect((await at.me.post.view(here())).sendMinute).toBe(345);
});
const EMPTY = { baseRevision: 2, sendMinute: 60, mail: null, password: null, hook: null };

test('a password and a webhook’s secret go in and never come out', async () => {
  const input = { mail: SERVER, password: { set: PASSWORD }, hook: { url: HOOK } };
  const { hookSecret, ...written } = await change(input);
  expect(hookSecret).toMatch(/^[\w-]{43}$/);
  expect(await stored()).toMatchObject({ mail_password: PASSWORD, hook_secret: hookSecret });
  const view = await at.me.post.view(here());
  expect(view).toMatchObject({ mail: SERVER, hasPassword: true, hookUrl: HOOK });
  const stale = await refused(
    at.me.post.change({ ...command(), ...EMPTY, baseRevision: written.revision - 1 }),
  );
  expect(stale.code).toBe('conflict');
  const commands = await owner`select * from command`;
  for (const told of [view, written, stale, commands, at.logged]) {
    expect(JSON.stringify(told)).not.toContain(PASSWORD);
    expect(JSON.stringify(told)).not.toContain(hookSecret);
  }
});

test.each(['mail_password', 'hook_secret', '*'])('the web may not read %s', async (column) => {
  const app = connect(at.database.appUrl, { max: 1 });
  const [who] = await owner`select user_id as "userId" from member where role = 'owner'`;
  try {
    const reading = withGarage(app, { kind: 'user', userId: who?.userId }, at.garageId, (tx) =>
      tx.execute(query`select ${query.raw(column)} from post_setting`),
    );
    await expect(reading).rejects.toMatchObject({
      cause: { message: 'permission denied for table post_setting' },
    });
  } finally {
    await app.close();
  }
});

test('what is kept stays as it is, what is null is gone, and another address has another secret', async () => {
  const before = await stored();
  await change({ sendMinute: 300 });
  const secrets = { mail_password: before?.mail_password, hook_secret: before?.hook_secret };
  expect(await stored()).toMatchObject({ ...secrets, send_minute: 300 });
  const again = await change({ hook: { url: 'https://hooks.club.example/other' } });
  expect(again.hookSecret).toMatch(/^[\w-]{43}$/);
  expect(again.hookSecret).not.toBe(before?.hook_secret);
  await change({ mail: null, password: null, hook: null });
  const empty = { mail: null, mail_password: null, hook_url: null, hook_secret: null };
  expect(await stored()).toMatchObject(empty);
});

test('a webhook’s secret is told once, also to whoever sends the same again', async () => {
  const { revision: baseRevision } = await at.me.post.view(here());
  const input = { ...command(), ...EMPTY, baseRevision, hook: { url: HOOK } };
  const first = await at.me.post.change(input);
  expect(first.hookSecret).not.toBeNull();
  expect(await at.me.post.change(input)).toEqual({ ...first, hookSecret: null });
  expect(await stored()).toMatchObject({ hook_secret: first.hookSecret });
});

test('a stored password follows nobody to another server', async () => {
  await change({ mail: SERVER, password: { set: PASSWORD } });
  for (const more of [
    { host: 'elsewhere.example' },
    { port: 25 },
    { encryption: 'ifOffered' as const },
    { user: 'somebody' },
  ]) {
    const refusal = await refused(change({ mail: { ...SERVER, ...more } }));
    expect([refusal.code, refusal.field]).toEqual(['badInput', 'password']);
  }
  await change({ mail: { ...SERVER, from: 'letters@club.example' } });
  expect(await stored()).toMatchObject({ mail_password: PASSWORD });
  await change({ mail: null, password: null });
  const none = await refused(change({ mail: SERVER, password: keep }));
  expect([none.code, none.field]).toEqual(['badInput', 'password']);
});

test.each([
  ['mail.host', { mail: { ...SERVER, host: 'https://mail.club.example' } }],
  ['mail.host', { mail: { ...SERVER, host: '' } }],
  ['mail.port', { mail: { ...SERVER, port: 0 } }],
  ['mail.port', { mail: { ...SERVER, port: 65_536 } }],
  ['mail.from', { mail: { ...SERVER, from: 'North shed <garage@club.example>' } }],
  ['mail.from', { mail: { ...SERVER, from: 'garage@club.example\r\nBcc: x@y.example' } }],
  ['mail.user', { mail: { ...SERVER, user: 'a\nb' } }],
  ['hook', { hook: { url: 'ftp://hooks.club.example' } }],
  ['hook', { hook: { url: 'hooks' } }],
  ['sendMinute', { sendMinute: 1440 }],
  ['mail.user', { mail: { ...SERVER, user: null }, password: { set: 'x' } }],
  ['password', { mail: SERVER, password: null }],
])('a wrong %s is named with how to mend it, and nothing is set', async (field, given) => {
  const before = await stored();
  const wrong = { password: { set: PASSWORD }, ...given };
  const refusal = await refused(change(wrong));
  expect(refusal.code).toBe('badInput');
  expect(refusal.fields?.map((one) => one.field).join()).toMatch(new RegExp(`^${field}`));
  expect(refusal.message).not.toContain(PASSWORD);
  expect(await stored()).toEqual(before);
});

test('a test letter goes to whoever asks for it, at once, and is seen among what was sent', async () => {
  await change({ mail: null, password: null });
  expect(await refused(admin.post.test(command()))).toMatchObject({ field: 'mail' });
  await change({ mail: { ...SERVER, user: null }, password: null });
  const heard: string[] = [];
  const listener = listen(
    at.database.jobUrl,
    OUTBOX_CHANNEL,
    (told) => heard.push(told),
    () => {},
  );
  try {
    await listener.ready;
    const input = command();
    await admin.post.test(input);
    await admin.post.test(input);
    await eventually('the worker is told', async () => heard.length === 1);
  } finally {
    await listener.close();
  }
  await keepLetter(at, { email: OWNER.email, date: '2026-06-14', mail: OWNER.email });
  const { rows } = await at.me.letter.sent(here());
  const waiting = { state: 'waiting', tries: 0, words: null, answerLost: false, at: null };
  expect(rows).toMatchObject([
    { kind: 'test', whom: 'Odd Holm', mail: { ...waiting, to: 'admin@club.example' } },
    { kind: 'letter', whom: OWNER.name, mail: { ...waiting, to: OWNER.email } },
  ]);
  expect(rows.map(({ date }) => date)).toEqual(['2026-06-15', '2026-06-14']);
  expect(rows[0]?.mail.nextAt).toBe('2026-06-15T10:00:00.000Z');
});
