import { randomUUID } from 'node:crypto';
import { WISH_USUAL } from '@quartermark/digest';
import type { EntryDraft } from '@quartermark/engine/log';
import postgres from 'postgres';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  type Caller,
  cookieOf,
  type Home,
  home,
  house,
  OWNER,
  refused,
} from '../support/api-house.ts';
import { joinMember } from '../support/api-stranger.ts';
import { keepLetter, workOut } from '../support/as-the-worker.ts';

let at: Home;
let owner: postgres.Sql;
let member: Caller;
const MEMBER = 'member@club.example';
beforeAll(async () => {
  at = await home('api letters');
  owner = postgres(at.database.ownerUrl, { max: 1, onnotice: () => {} });
  member = await joinMember(at, MEMBER);
});
afterAll(async () => {
  await owner.end();
  await at.close();
});

const here = () => ({ garageId: at.garageId });
const command = () => ({ ...here(), commandId: randomUUID() });
const tonight = () => at.me.letter.tonight(here());
/** Facts that tonight's letter tells. */
const told = async () => (await tonight()).letter?.lines.flatMap(({ facts }) => facts) ?? [];

/** Says what the owner wants, on top of the usual. */
async function want(more: Partial<typeof WISH_USUAL>) {
  const { revision: baseRevision } = await at.me.letter.wish(here());
  const wish = { ...WISH_USUAL, ...more };
  return at.me.letter.changeWish({ ...command(), baseRevision, wish });
}

/** An item that fell due on 2026-01-05. @returns the fact */
async function overdue(name: string): Promise<string> {
  const [carId, itemId] = [at.carId, randomUUID()];
  const baseline = { on: '2025-01-05', historyComplete: true };
  const item = { name, limits: [{ measure: 'months' as const, value: 12 }], baseline };
  await at.me.item.add({ ...command(), carId, itemId, item });
  await workOut(at, carId);
  return `${carId}/overdue/${itemId}:2025-01-05`;
}

describe('letters that were composed', () => {
  const ids: string[] = [];
  let theirs: string;
  beforeAll(async () => {
    for (let day = 1; day <= 23; day++) {
      const date = `2026-05-${String(day).padStart(2, '0')}`;
      const mail = day % 2 === 0 ? { mail: OWNER.email } : {};
      ids.unshift(await keepLetter(at, { email: OWNER.email, date, lines: ['a', 'b'], ...mail }));
    }
    theirs = await keepLetter(at, { email: MEMBER, date: '2026-05-23' });
  });

  test('are listed once each, one’s own alone, the newest first', async () => {
    const first = await at.me.letter.list(here());
    expect(first.rows).toHaveLength(20);
    const second = await at.me.letter.list({ ...here(), cursor: first.next });
    expect(second.next).toBeNull();
    const rows = [...first.rows, ...second.rows];
    expect(rows.map(({ letterId }) => letterId)).toEqual(ids);
    const none = { state: 'notByMail', to: null, tries: 0, words: null, answerLost: false };
    expect(rows[0]).toEqual({
      letterId: ids[0],
      date: '2026-05-23',
      subject: 'Letter of 2026-05-23',
      lines: 2,
      read: false,
      mail: { ...none, at: null, nextAt: null },
    });
    const waiting = { state: 'waiting', to: OWNER.email, nextAt: '2026-05-22T05:00:00.000Z' };
    expect(rows[1]?.mail).toMatchObject(waiting);
    expect((await member.letter.list(here())).rows.map((row) => row.letterId)).toEqual([theirs]);
  });

  test('are shown as they were composed, and to nobody else of the garage', async () => {
    const view = await at.me.letter.view({ ...here(), letterId: ids[0] ?? '' });
    expect(view).toMatchObject({
      date: '2026-05-23',
      letter: { subject: 'Letter of 2026-05-23', lines: [{ text: 'a' }, { text: 'b' }] },
      text: 'Overdue on 2026-05-23.\r\n',
      html: '<!doctype html><p>Overdue on 2026-05-23.</p>\r\n',
      read: false,
      missed: 2,
    });
    expect(view.letter).not.toHaveProperty('said');
    const unknown = await refused(member.letter.view({ ...here(), letterId: randomUUID() }));
    for (const asking of [
      () => member.letter.view({ ...here(), letterId: ids[0] ?? '' }),
      () => at.me.letter.view({ ...here(), letterId: theirs }),
      () => member.letter.markRead({ ...command(), letterId: ids[0] ?? '', read: true }),
    ])
      expect(await refused(asking())).toEqual(unknown);
    expect(unknown.code).toBe('notFound');
  });

  test('count as unread until they are marked, opening marks nothing, and a mark can be taken back', async () => {
    const letterId = ids[0] ?? '';
    const unread = async () => (await at.me.letter.unread(here())).count;
    await at.me.letter.view({ ...here(), letterId });
    expect(await unread()).toBe(23);
    const input = { ...command(), letterId, read: true };
    await at.me.letter.markRead(input);
    expect(await at.me.letter.markRead(input)).toMatchObject({ id: letterId });
    expect(await unread()).toBe(22);
    expect((await at.me.letter.list(here())).rows[0]?.read).toBe(true);
    await at.me.letter.markRead({ ...command(), letterId, read: false });
    expect(await unread()).toBe(23);
    expect((await member.letter.unread(here())).count).toBe(1);
  });
});

describe('letter.tonight', () => {
  test('is the letter as it would be now, and writes nothing', async () => {
    const fact = await overdue('Engine oil');
    const count = () => owner`select (select count(*) from digest) as digests,
      (select count(*) from letter) as letters, (select count(*) from delivery) as deliveries`;
    const before = await count();
    const view = await tonight();
    expect(view).toMatchObject({
      date: '2026-06-15',
      composed: false,
      // 06:00 in London has passed
      sendsAt: null,
      why: null,
    });
    expect(view.letter?.subject).toContain('Engine oil');
    expect(view.letter?.lines[0]?.facts).toEqual([fact]);
    expect(view.html).toContain('Engine oil');
    expect(await count()).toEqual(before);
  });

  test('leaves at its hour, which is named until it has passed', async () => {
    await owner`insert into post_setting (garage_id, send_minute, changed_at, changed_by)
      select id, 1380, now(), changed_by from garage where id = ${at.garageId}`;
    const before = await tonight();
    await owner`delete from post_setting where garage_id = ${at.garageId}`;
    // 23:00 in London
    expect(before).toMatchObject({ composed: false, sendsAt: '2026-06-15T22:00:00.000Z' });
  });

  test('says why there is none: paused, another day, nothing new', async () => {
    await want({ pausedUntil: '2026-06-15' });
    expect(await tonight()).toMatchObject({ letter: null, html: null, why: 'paused' });
    // a Monday
    await want({ rhythm: { every: 'week', on: 2 } });
    expect(await tonight()).toMatchObject({ letter: null, why: 'notTonight' });
    await want({});
    const facts = await told();
    const said = facts.map((fact) => ({ fact, on: '2026-06-14', grade: 99, state: 'overdue' }));
    await keepLetter(at, { email: OWNER.email, date: '2026-06-14', said });
    expect(await tonight()).toMatchObject({ letter: null, why: 'silent' });
    // the other member heard nothing yet
    const theirs = (await member.letter.tonight(here())).letter;
    expect(theirs?.lines.flatMap((line) => line.facts)).toEqual(facts);
  });

  test('is tomorrow’s once the present date has had its letters', async () => {
    await owner`update garage_day set letter_date = '2026-06-15' where garage_id = ${at.garageId}`;
    const view = await tonight();
    await owner`update garage_day set letter_date = null where garage_id = ${at.garageId}`;
    expect(view).toMatchObject({
      date: '2026-06-16',
      composed: true,
      // 06:00 in London
      sendsAt: '2026-06-16T05:00:00.000Z',
    });
  });
});

test('a wish is the usual until it is said; a stale one is shown both; it is each member’s own', async () => {
  const before = await member.letter.wish(here());
  expect(before).toMatchObject({
    wish: WISH_USUAL,
    revision: 0,
    usual: true,
    to: MEMBER,
    canMail: false,
    cars: [{ carId: at.carId, name: 'Brindle 2' }],
    sendMinute: 360,
  });
  const wish = { ...WISH_USUAL, mail: false, cars: [at.carId] };
  const input = { ...command(), baseRevision: 0, wish };
  const written = await member.letter.changeWish(input);
  expect(await member.letter.changeWish(input)).toEqual(written);
  expect(await member.letter.wish(here())).toMatchObject({ wish, revision: 1, usual: false });
  expect((await at.me.letter.wish(here())).wish.mail).toBe(true);
  const stale = await refused(
    member.letter.changeWish({ ...command(), baseRevision: 0, wish: WISH_USUAL }),
  );
  expect(stale).toMatchObject({ code: 'conflict', conflict: { revision: 1, body: wish } });
  const pause = { ...WISH_USUAL, pausedUntil: '2027-06-17' };
  const late = await refused(
    member.letter.changeWish({ ...command(), baseRevision: 1, wish: pause }),
  );
  expect(late.field).toBe('wish.pausedUntil');
});

describe('what is put off', () => {
  const add = (facts: string[], until = '2026-06-20') =>
    at.me.putOff.add({ ...command(), facts, until });
  const standing = async () => (await at.me.putOff.list(here())).rows;

  test('is told no more until its day is over, by nobody of the garage, and again once it is taken back', async () => {
    const fact = await overdue('Coolant');
    expect(await told()).toContain(fact);
    await add([fact]);
    expect(await told()).not.toContain(fact);
    const others = await member.letter.tonight(here());
    expect(others.letter?.lines.flatMap(({ facts }) => facts)).not.toContain(fact);
    expect(await standing()).toEqual([{ fact, until: '2026-06-20' }]);
    await at.me.putOff.remove({ ...command(), fact });
    expect(await standing()).toEqual([]);
    expect(await told()).toContain(fact);
  });

  test('counts as bad as the asker was told that it is, so that worse is told', async () => {
    const fact = await overdue('Belts');
    const said = [{ fact, on: '2026-06-13', grade: 7, state: 'overdue' }];
    await keepLetter(at, { email: MEMBER, date: '2026-06-13', said });
    await member.putOff.add({ ...command(), facts: [fact], until: '2026-06-20' });
    const [row] = await owner`select grade from put_off where fact = ${fact}`;
    expect(row?.grade).toBe(7);
  });

  test.each(['2026-06-14', '2026-08-15'])(
    'comes back within 60 days: not until %s',
    async (until) => {
      const fact = await overdue('Plugs');
      const refusal = await refused(add([fact], until));
      expect([refusal.code, refusal.field]).toEqual(['badInput', 'until']);
      await add([fact], '2026-08-14');
    },
  );

  test('is something that is so', async () => {
    const refusal = await refused(add([`${at.carId}/overdue/${randomUUID()}:never`]));
    expect([refusal.code, refusal.field]).toEqual(['badInput', 'facts']);
  });

  test('is never what forbids driving, nor anything sent along with it', async () => {
    const also = await overdue('Filters');
    const finding = at.draft('finding', {
      on: '2026-06-12',
      what: 'Brake hose cracked',
      severity: 'doNotDrive',
    });
    await at.record(finding as EntryDraft);
    await workOut(at, at.carId);
    const urgent = (await told()).find((fact) => fact.includes('/urgent/')) ?? '';
    expect(urgent).toContain('doNotDrive');
    const refusal = await refused(add([also, urgent]));
    expect([refusal.code, refusal.field]).toEqual(['notAllowed', 'facts']);
    expect((await standing()).map(({ fact }) => fact)).not.toContain(also);
    expect(await told()).toContain(urgent);
  });
});

test('the demo garage has its letters and what comes tonight, and nothing leaves it', async () => {
  const demo = await house('api letters demo', () => new Date('2026-06-15T10:00:00Z'));
  try {
    const response = await demo.post('/setup/demo', { token: demo.token });
    const visitor = demo.caller(cookieOf(response));
    const { garageId } = (await response.json()) as { garageId: string };
    const asked = () => ({ garageId, commandId: randomUUID() });
    expect((await visitor.letter.list({ garageId })).rows).toEqual([]);
    expect((await visitor.letter.tonight({ garageId })).letter?.lines.length).toBeGreaterThan(0);
    expect((await visitor.letter.wish({ garageId })).canMail).toBe(false);
    const post = { baseRevision: 0, sendMinute: 360, mail: null, password: null, hook: null };
    for (const asking of [
      () => visitor.post.view({ garageId }),
      () => visitor.post.change({ ...asked(), ...post }),
      () => visitor.post.test(asked()),
      () => visitor.feed.make(asked()),
    ]) {
      const refusal = await refused(asking());
      expect(refusal.code).toBe('notAllowed');
      expect(refusal.message).toContain('Nothing leaves the demo garage');
    }
  } finally {
    await demo.close();
  }
});

test('a wish for cars that are not in the garage is refused beside its field', async () => {
  const { revision: baseRevision } = await at.me.letter.wish(here());
  const wish = { ...WISH_USUAL, cars: [randomUUID()] };
  const asking = at.me.letter.changeWish({ ...command(), baseRevision, wish });
  expect(await refused(asking)).toMatchObject({ code: 'badInput', field: 'wish.cars' });
});
