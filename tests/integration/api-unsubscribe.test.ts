import { randomUUID } from 'node:crypto';
import { answerUnsubscribe } from '@quartermark/api/server';
import { makeSecret } from '@quartermark/db';
import postgres from 'postgres';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Home, home, ORIGIN } from '../support/api-house.ts';

let at: Home;
/** as the letter of a night holds it */
let secret: string;

beforeAll(async () => {
  at = await home('api unsubscribe');
  const made = makeSecret();
  ({ secret } = made);
  const sql = postgres(at.database.ownerUrl, { max: 1, onnotice: () => {} });
  await sql`insert into secret_key (hash, kind, garage_id, user_id, subject_id)
    select ${made.hash}, 'unsubscribe', organization_id, user_id, ${randomUUID()} from member`;
  await sql.end();
});
afterAll(() => at.close());

/** As a mail program asks (RFC 8058): without a cookie, and from nowhere. */
function asked(method: 'GET' | 'POST', given = secret): Promise<Response> {
  const address = `${ORIGIN}/api/unsubscribe/${given}`;
  const posted = {
    method: 'POST',
    headers: { 'content-type': 'application/x-www-form-urlencoded' },
    body: 'List-Unsubscribe=One-Click',
  };
  const request = method === 'POST' ? new Request(address, posted) : new Request(address);
  const { world } = at.api.createContext({ headers: new Headers() });
  return answerUnsubscribe(world, request, given);
}

const wish = () => at.me.letter.wish({ garageId: at.garageId });

test('opening the address writes nothing and shows a form; one POST takes the reader off the mail', async () => {
  const { garageId } = at;
  const own = { ...(await wish()).wish, onlyIfNew: false };
  await at.me.letter.changeWish({ garageId, commandId: randomUUID(), baseRevision: 0, wish: own });
  const opened = await asked('GET');
  expect(opened.status).toBe(200);
  expect(await opened.text()).toContain('<form method="post">');
  expect((await wish()).wish.mail).toBe(true);

  expect((await asked('POST')).status).toBe(200);
  expect((await wish()).wish).toEqual({ ...own, mail: false });
  const { revision } = await wish();
  expect((await asked('POST')).status).toBe(200);
  expect((await wish()).revision).toBe(revision);
});

test('an address that opens nothing says so, and tells no more', async () => {
  for (const unknown of ['x'.repeat(43), 'x', ''])
    for (const method of ['GET', 'POST'] as const)
      expect((await asked(method, unknown)).status).toBe(404);
});
