import type { Fault } from '../fault.ts';

const API = 'packages/api/src';
const DB = 'packages/db/src';
const FEED = 'tests/integration/api-feed.test.ts';
const LETTERS = 'tests/integration/api-letters.test.ts';
const POST = 'tests/integration/api-post.test.ts';

/** A letter that somebody else reads, a danger put off, a secret that comes out, a calendar that loses count. */
export const letterFaults: Fault[] = [
  {
    name: 'letters: what forbids driving is put off beside what may be',
    edits: [
      {
        file: `${API}/put-off/add.ts`,
        find: 'input.facts.some((fact) => forbidding',
        replace: 'input.facts.every((fact) => forbidding',
      },
    ],
    test: {
      file: LETTERS,
      name: 'what is put off is never what forbids driving, nor anything sent along with it',
    },
  },
  {
    name: 'letters: what became worse since it was told is put off as bad as it is now',
    edits: [
      { file: `${API}/put-off/add.ts`, find: 'told.get(id) ?? grade', replace: 'grade' },
      { file: `${API}/put-off/add.ts`, find: 'const told = new Map(', replace: 'void new Map(' },
    ],
    test: {
      file: LETTERS,
      name: 'what is put off counts as bad as the asker was told that it is, so that worse is told',
    },
  },
  {
    name: 'letters: a member opens the letter of another',
    edits: [
      {
        file: `${DB}/letters/read.ts`,
        find: 'eq(letter.userId, userId), eq(letter.id, letterId)));\n  return found',
        replace: 'eq(letter.id, letterId)));\n  return found',
      },
    ],
    test: {
      file: LETTERS,
      name: 'letters that were composed are shown as they were composed, and to nobody else of the garage',
    },
  },
  {
    name: 'letters: the demo garage gets a calendar address',
    edits: [
      {
        file: `${API}/feed/manage.ts`,
        find: '    mustNotBeDemo(garage);\n',
        replace: '    void mustNotBeDemo;\n',
      },
    ],
    test: {
      file: LETTERS,
      name: 'the demo garage has its letters and what comes tonight, and nothing leaves it',
    },
  },
  {
    name: 'letters: a member sets the garage’s post',
    edits: [
      {
        file: `${API}/post/must-keep.ts`,
        find: "role === 'owner' || role === 'admin'",
        replace: "role !== 'job'",
      },
    ],
    test: {
      file: POST,
      name: 'the owner and administrators set the post; a member neither sees nor sets it',
    },
  },
  {
    name: 'letters: the web may read the mail server’s password',
    edits: [
      {
        file: 'packages/db/migrations/0007_letters.sql',
        find: 'grant select (garage_id, send_minute, mail, has_password,',
        replace: 'grant select (garage_id, send_minute, mail, mail_password, has_password,',
      },
    ],
    test: { file: POST, name: 'the web may not read mail_password' },
  },
  {
    name: 'letters: a kept password goes to another server',
    edits: [{ file: `${API}/post/change.ts`, find: 'if (!same)', replace: 'if (mail === null)' }],
    test: { file: POST, name: 'a stored password follows nobody to another server' },
  },
  {
    name: 'letters: a webhook’s secret that is not the stored one is told when asked again',
    edits: [
      {
        file: `${API}/post/change.ts`,
        find: 'hookSecret: done ? made : null',
        replace: 'hookSecret: done ? made : made',
      },
    ],
    test: {
      file: POST,
      name: 'a webhook’s secret is told once, also to whoever sends the same again',
    },
  },
  {
    name: 'letters: two fetches of a calendar do not wait for one another',
    edits: [{ file: `${API}/feed/calendar-of.ts`, find: 'lock: true', replace: 'lock: false' }],
    test: {
      file: FEED,
      name: 'a fetch that has to wait counts on from what the one before it was told',
    },
  },
  {
    name: 'letters: an address that was replaced opens the calendar that replaced it',
    edits: [
      {
        file: `${API}/feed/calendar-of.ts`,
        find: 'feed?.id !== subjectId',
        replace: 'feed === null || subjectId === null',
      },
      {
        file: `${DB}/feeds/feed.ts`,
        find: 'eq(secretKey.subjectId, id)));',
        replace: 'eq(secretKey.subjectId, garageId)));',
      },
    ],
    test: {
      file: FEED,
      name: 'an address that was replaced or taken back opens nothing, nor does one that was never made',
    },
  },
];
