import type { Edit, Fault } from '../fault.ts';

const DB = 'packages/db/src';
const tenant = 'tests/integration/db-tenant.test.ts';

const NO_ROW_SECURITY: Edit = {
  file: 'packages/db/migrations/0001_ground.sql',
  find: `execute format('alter table %I enable row level security', t);`,
  replace: 'null;',
};

/** One garage sees another, a record comes undone, an older answer replaces a newer. */
export const databaseFaults: Fault[] = [
  {
    name: 'row-level security is off and a query forgets the garage',
    edits: [
      NO_ROW_SECURITY,
      {
        file: `${DB}/cars/read.ts`,
        find: '.where(and(eq(car.garageId, garageId), isNull(car.removedAt)))\n',
        replace: '.where(isNull(car.removedAt))\n',
      },
    ],
    test: { file: tenant, name: 'withGarage() shows this garage and nothing of another' },
  },
  {
    name: 'row-level security is off, every query still names its garage',
    edits: [NO_ROW_SECURITY],
    test: { file: tenant, name: 'without a garage no role sees a row of any garage table' },
  },
  {
    name: 'a garage opens for whoever knows its id',
    edits: [
      {
        file: `${DB}/with-garage.ts`,
        find: `if (role === null) throw new NotYours(garageId);
      return fn(tx, role);`,
        replace: `return fn(tx, role ?? 'member');`,
      },
    ],
    test: {
      file: tenant,
      name: 'withGarage() answers a stranger just as it answers about a garage that does not exist',
    },
  },
  {
    name: 'the guard of a snapshot is skipped',
    edits: [
      {
        file: `${DB}/snapshots/replace-if-later.ts`,
        find: 'set, setWhere: later }',
        replace: 'set }',
      },
    ],
    test: {
      file: 'tests/integration/db-snapshot.test.ts',
      name: 'replaceIfLater() keeps the latest in whatever order the answers come in',
    },
  },
  {
    name: 'an amendment revives a tombstone',
    edits: [
      {
        file: `${DB}/entries/amend.ts`,
        find: '        isNull(entry.removedAt),\n',
        replace: '',
      },
    ],
    test: {
      file: 'tests/integration/db-record.test.ts',
      name: 'removeEntry() leaves a tombstone that neither an amendment nor its own id revives',
    },
  },
  {
    name: 'two who amend the same revision both win',
    edits: [
      {
        file: `${DB}/entries/amend.ts`,
        find: '        eq(entry.revision, baseRevision),\n',
        replace: '',
      },
    ],
    test: {
      file: 'tests/integration/db-record.test.ts',
      name: 'amendEntry() lets one of two through who change the same revision at once',
    },
  },
  {
    name: 'the tables of the whole book stand open',
    edits: [
      {
        file: 'packages/db/migrations/0002_whole_book.sql',
        find: `execute format('alter table %I enable row level security', t);`,
        replace: 'null;',
      },
    ],
    test: {
      file: 'tests/integration/db-tenant-book.test.ts',
      name: 'rows that are there are seen from their own garage alone',
    },
  },
  {
    name: 'a first spec sheet is written over another first one',
    edits: [
      {
        file: `${DB}/change-newest.ts`,
        find: '.onConflictDoNothing()',
        replace:
          '.onConflictDoUpdate({ target: Object.keys(key).map((name) => columns[name] as PgColumn), set: changed })',
      },
    ],
    test: {
      file: 'tests/integration/api-calendar.test.ts',
      name: 'of two who write the first sheet at once, one wins and the other is shown it',
    },
  },
];
