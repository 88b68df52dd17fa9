import type { Fault } from '../fault.ts';

const API = 'packages/api/src';
const DB = 'packages/db/src';
const FEED = 'tests/integration/api-feed.test.ts';
const KEYS = 'tests/integration/api-unsubscribe-keys.test.ts';
const UNSUBSCRIBE = 'tests/integration/api-unsubscribe.test.ts';

/** A door without sign-in that opens for the wrong one, keeps its key about, or does something when looked at. */
export const letterDoorFaults: Fault[] = [
  {
    name: 'letter doors: a calendar is given to who is no member any more',
    edits: [
      {
        file: `${API}/feed/answer.ts`,
        find: "{ kind: 'user', userId }",
        replace: "{ kind: 'job' }",
      },
    ],
    test: { file: FEED, name: 'who is no member any more has no calendar' },
  },
  {
    name: 'letter doors: the secret of a calendar is kept with the command that made it',
    edits: [
      {
        file: `${API}/feed/manage.ts`,
        find: 'return { id: feedId, revision: 1, version: 0 };',
        replace: 'return { id: feedId, revision: 1, version: 0, secret } as never;',
      },
    ],
    test: { file: FEED, name: 'an address is told once, and what is stored does not hold it' },
  },
  {
    name: 'letter doors: the sequence of an entry is not kept',
    edits: [
      {
        file: `${DB}/feeds/feed.ts`,
        find: 'sequence: sql`excluded.sequence`,',
        replace: '',
      },
    ],
    test: { file: FEED, name: 'two fetches at once count one change' },
  },
  {
    name: 'letter doors: opening the address to unsubscribe switches mail off',
    edits: [
      {
        file: `${API}/letter/unsubscribe.ts`,
        find: "if (request.method !== 'POST')",
        replace: "if (request.method === 'HEAD')",
      },
    ],
    test: {
      file: UNSUBSCRIBE,
      name: 'opening the address writes nothing and shows a form; one POST takes the reader off the mail',
    },
  },
  {
    name: 'letter doors: the secret of a calendar unsubscribes',
    edits: [
      {
        file: `${DB}/secret-keys/find.ts`,
        find: 'and(eq(secretKey.hash, hashSecret(secret)), eq(secretKey.kind, kind))',
        replace: 'and(eq(secretKey.hash, hashSecret(secret)))',
      },
    ],
    test: {
      file: KEYS,
      name: 'an address to unsubscribe that nobody was given, or a calendar’s, is nowhere',
    },
  },
];
