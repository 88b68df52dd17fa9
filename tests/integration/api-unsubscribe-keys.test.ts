import { randomUUID } from 'node:crypto';
import { answerFeed, answerUnsubscribe } from '@quartermark/api/server';
import { connect, type Db, insertSecretKey, makeSecret, schema } from '@quartermark/db';
import { WISH_USUAL } from '@quartermark/digest';
import { and, eq } from 'drizzle-orm';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { type Home, home, ORIGIN } from '../support/api-house.ts';
import { joinMember } from '../support/api-stranger.ts';

let at: Home;
let owner: Db;
let secret: string;

beforeAll(async () => {
  at = await home('api_unsubscribe');
  owner = connect(at.database.ownerUrl, { max: 1 });
});
afterAll(async () => {
  await owner?.close();
  await at?.close();
});
beforeEach(async () => {
  await owner.orm.delete(schema.letterSetting);
  secret = await addressOf('ada@club.example');
});

/** As composing a letter writes it. */
async function addressOf(email: string): Promise<string> {
  const key = makeSecret();
  const userId = await idOf(email);
  const { garageId } = at;
  await owner.orm.transaction((tx) =>
    insertSecretKey(tx, {
      hash: key.hash,
      kind: 'unsubscribe',
      garageId,
      userId,
      subjectId: randomUUID(),
    }),
  );
  return key.secret;
}

async function idOf(email: string): Promise<string> {
  const [person] = await owner.orm.select().from(schema.user).where(eq(schema.user.email, email));
  if (!person) throw new Error(`expected somebody of ${email}`);
  return person.id;
}

const world = () => at.api.createContext({ headers: new Headers() }).world;
const wishes = () => owner.orm.select().from(schema.letterSetting);
const mine = () => at.me.letter.wish({ garageId: at.garageId });

/** As a mail program sends it (RFC 8058, section 3.2): no cookie, no origin of ours. */
const posted = (to: string) =>
  answerUnsubscribe(
    world(),
    new Request(`${ORIGIN}/api/unsubscribe/${to}`, {
      method: 'POST',
      headers: { 'content-type': 'application/x-www-form-urlencoded' },
      body: 'List-Unsubscribe=One-Click',
    }),
    to,
  );
const opened = (to: string) =>
  answerUnsubscribe(world(), new Request(`${ORIGIN}/api/unsubscribe/${to}`), to);

test('an address to unsubscribe switches that member’s mail off, once, however often it is posted to', async () => {
  const other = await joinMember(at, 'odd@club.example');
  expect((await posted(secret)).status).toBe(200);
  const after = await mine();
  expect(after.wish).toEqual({ ...WISH_USUAL, mail: false });
  expect((await posted(secret)).status).toBe(200);
  expect(await mine()).toEqual(after);
  expect((await other.letter.wish({ garageId: at.garageId })).wish.mail).toBe(true);
});

test('an address to unsubscribe that nobody was given, or a calendar’s, is nowhere', async () => {
  const feed = await at.me.feed.make({ garageId: at.garageId, commandId: randomUUID() });
  const calendar = feed.path?.match(/([^/]+)\.ics$/)?.[1] ?? '';
  for (const to of [makeSecret().secret, calendar, '', 'x', 'é'.repeat(43)])
    for (const response of [await opened(to), await posted(to)]) expect(response.status).toBe(404);
  expect(calendar).toHaveLength(43);
  expect(await wishes()).toEqual([]);
});

test('an address to unsubscribe opens no calendar', async () => {
  const url = `${ORIGIN}/api/feed/${secret}.ics`;
  const response = await answerFeed(world(), new Request(url), `${secret}.ics`, ORIGIN);
  expect(response.status).toBe(404);
});

test('an address to unsubscribe of somebody who left the garage writes nothing', async () => {
  const email = 'gone@club.example';
  await joinMember(at, email);
  const theirs = await addressOf(email);
  const { member } = schema;
  const them = and(eq(member.organizationId, at.garageId), eq(member.userId, await idOf(email)));
  await owner.orm.delete(member).where(them);
  await posted(theirs);
  expect(await wishes()).toEqual([]);
});
