import { describe, expect, test } from 'vitest';
import { importDirections } from './directions.ts';
import { documentsTellTheTruth } from './documents.ts';
import * as house from './house-rules.ts';
import { migrationsInOrder } from './migrations.ts';
import { isCode, type Rule, readProject, type SourceFile, trackedFiles } from './source-files.ts';

const project = readProject();
const file = (path: string, text: string): SourceFile => ({ path, text });
const journal = (...entries: [number, number, string][]) =>
  file(
    'packages/db/migrations/meta/_journal.json',
    JSON.stringify({ entries: entries.map(([idx, when, tag]) => ({ idx, when, tag })) }),
  );
const repeat = (line: string, times: number) => Array(times).fill(line).join('\n').concat('\n');

/** Each rule with samples that break it, so that it is known to be able to fail. */
const rules: [string, Rule, SourceFile[][]][] = [
  [
    'importDirections() keeps to who may import whom',
    importDirections,
    [
      [file('packages/engine/src/a.ts', `import { connect } from '@quartermark/db';`)],
      [file('packages/engine/src/a.ts', `import path from 'node:path';`)],
      [file('packages/engine/src/a.ts', `export * from '../../db/src/index.ts';`)],
      [file('packages/engine/src/a.ts', `import { b } from './b';`)],
      [
        file(
          'packages/db/src/a.ts',
          `import {\n  startWorker,\n} from '@quartermark/jobs/worker';`,
        ),
      ],
      [file('packages/api/src/car/a.ts', `import { demoGarage } from '@quartermark/seed';`)],
      [file('packages/api/src/a.ts', `const w = await import('@quartermark/jobs/worker');`)],
      [file('apps/web/src/forms/a.tsx', `import { REFUSALS } from '@quartermark/api/client';`)],
      [file('apps/web/src/forms/a.tsx', `import type { A } from '@quartermark/api/server';`)],
      [file('apps/worker/src/a.ts', `import { connect } from '@quartermark/db';`)],
      [file('seed/src/a.ts', `import { z } from 'zod';`)],
      [file('packages/digest/src/a.ts', `import { connect } from '@quartermark/db';`)],
      [file('packages/digest/src/a.ts', `import { Temporal } from 'temporal-polyfill';`)],
      [file('packages/jobs/src/a.ts', `import { x } from '@quartermark/jobs/outbox';`)],
      [file('packages/post/src/a.ts', `import { DAY } from '@quartermark/engine/calendar';`)],
      [file('packages/api/src/a.ts', `import { sendLetter } from '@quartermark/post';`)],
      [file('packages/jobs/src/outbox/a.ts', `import { sendLetter } from '@quartermark/post';`)],
    ],
  ],
  [
    'pureRooms() finds no clock, chance, network or system in engine, digest and seed',
    house.pureRooms,
    ['Date.now()', 'new Date()', 'Math.random()', 'process.env.TZ', 'fetch(url)'].flatMap((call) =>
      ['engine', 'digest'].map((room) => [
        file(`packages/${room}/src/a.ts`, `export const a = ${call};`),
      ]),
    ),
  ],
  [
    'sqlOnlyInDb() finds no query outside the database room',
    house.sqlOnlyInDb,
    [
      [file('packages/api/src/a.ts', 'const rows = await sql`select 1`;')],
      [file('apps/launcher/src/a.ts', `import postgres from 'postgres';`)],
      [file('packages/jobs/src/a.ts', `import { eq } from 'drizzle-orm';`)],
      [file('packages/jobs/src/a.ts', `import pg from 'pg';`)],
    ],
  ],
  [
    'bullmqInOneFile() finds one file that imports bullmq',
    house.bullmqInOneFile,
    [[file('packages/api/src/a.ts', `import { Queue } from 'bullmq';`)]],
  ],
  [
    'settingsInEnvFiles() finds the environment read in env.ts alone',
    house.settingsInEnvFiles,
    [[file('packages/api/src/a.ts', 'const a = process.env.SECRET;')]],
  ],
  [
    'fileLength() finds no long file without a reason at its top',
    house.fileLength,
    [[file('packages/db/src/a.ts', repeat('const a = 1;', 401))]],
  ],
  [
    'zonedInstants() finds a zone in every instant column',
    house.zonedInstants,
    [
      [file('packages/db/migrations/0009_a.sql', 'create table a (\n  at timestamp not null\n);')],
      [file('packages/db/src/a.ts', `const at = timestamp('at', { mode: 'date' });`)],
    ],
  ],
  [
    'namedRooms() finds no folder that could hold anything',
    house.namedRooms,
    [[file('packages/api/src/utils/a.ts', '')]],
  ],
  [
    'explainedSuppressions() finds a reason beside each check that is off',
    house.explainedSuppressions,
    [
      [file('seed/src/a.ts', '// @ts-ignore')],
      [file('seed/src/a.ts', '// biome-ignore lint/style/useConst: ok')],
      [file('seed/src/a.ts', '// oxlint-disable-next-line no-console')],
    ],
  ],
  [
    'noMachinePaths() finds no path of one machine and no registry',
    house.noMachinePaths,
    [
      [file('README.md', 'see /home/someone/notes')],
      [file('package-lock.json', '"resolved": "https://registry.example.org/a.tgz"')],
    ],
  ],
  [
    'migrationsInOrder() finds rising stamps, each listed and there',
    migrationsInOrder,
    [
      [],
      [journal([0, 5, 'a'], [1, 5, 'b']), file('packages/db/migrations/a.sql', '')],
      [journal([0, 5, 'a'])],
      [journal([0, 5, 'a']), ...['a', 'b'].map((n) => file(`packages/db/migrations/${n}.sql`, ''))],
    ],
  ],
  [
    'documentsTellTheTruth() finds every path and command that the documents name',
    documentsTellTheTruth,
    [
      [file('README.md', 'Run `npm run fly`.'), file('package.json', '{"scripts":{}}')],
      [file('README.md', 'See `packages/db/src/gone.ts`.'), file('package.json', '{}')],
      [file('README.md', '    apps/gone/   what is gone'), file('package.json', '{}')],
      [file('DEVELOPERS.md', 'See `GONE.md`.'), file('package.json', '{}')],
    ],
  ],
];

test('readProject() saw every file that git keeps', () => {
  const seen = new Set(project.map((one) => one.path));
  const tracked = trackedFiles();
  expect(tracked.length).toBeGreaterThan(50);
  expect(tracked.filter((path) => !seen.has(path))).toEqual([]);
  expect(project.filter(isCode).length).toBeGreaterThan(50);
});

describe.each(rules)('%s', (_name, rule, samples) => {
  test('in the project', () => {
    expect(rule(project)).toEqual([]);
  });
  test.each(samples.map((sample, at) => [at + 1, sample] as const))(
    'and fails on sample %i',
    (_at, sample) => {
      expect(rule(sample)).not.toEqual([]);
    },
  );
});
