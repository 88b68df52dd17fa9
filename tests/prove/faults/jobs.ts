import type { Fault } from '../fault.ts';

const WORK = 'packages/db/src/work';
const recomputes = 'tests/integration/jobs-recompute.test.ts';

/** What is committed is not recomputed, is recomputed late, or nobody is told. */
export const jobsFaults: Fault[] = [
  {
    name: 'the notification of a commit is lost',
    edits: [
      {
        file: 'packages/db/src/garages/tell.ts',
        find: `select pg_notify(\${OUTBOX_CHANNEL}, '')`,
        replace: `select \${OUTBOX_CHANNEL}::text`,
      },
    ],
    test: {
      file: recomputes,
      name: 'a recompute queue on PostgreSQL recompute() follows a commit, woken by the notification alone',
    },
  },
  {
    name: 'the notification of a snapshot is lost',
    edits: [
      {
        file: `${WORK}/settle.ts`,
        find: '  if (written) await tellSnapshot(tx, { g: garageId, c: carId, v: done.version });\n',
        replace: '',
      },
    ],
    test: {
      file: recomputes,
      name: 'a recompute queue on PostgreSQL recompute() tells those who listen which version the snapshot rests on',
    },
  },
  {
    name: 'the relay marks a row before the queue has acknowledged it',
    edits: [
      {
        file: `${WORK}/take-outbox.ts`,
        find: '    await publish(rows);\n',
        replace: '    publish(rows).catch(() => {});\n',
      },
    ],
    test: {
      file: 'tests/integration/db-outbox.test.ts',
      name: 'takeOutbox() leaves rows that could not be published for the next time',
    },
  },
  {
    name: 'two relays take the same rows',
    edits: [
      {
        file: `${WORK}/take-outbox.ts`,
        find: `      .limit(limit)
      .for('update', { skipLocked: true });`,
        replace: '      .limit(limit);',
      },
    ],
    test: {
      file: 'tests/integration/db-outbox.test.ts',
      name: 'takeOutbox() passes over rows that another relay has in its hands',
    },
  },
  {
    name: 'the reconciler looks only for an older engine',
    edits: [
      {
        file: `${WORK}/take-stale.ts`,
        find: '(done < wanted or done_engine <',
        replace: '(done_engine <',
      },
    ],
    test: {
      file: 'tests/integration/jobs-reconcile.test.ts',
      name: 'the reconciler queue on PostgreSQL reconcile() finds a car that has an answer of this engine, but an older one',
    },
  },
];
