import { readFileSync } from 'node:fs';
import path from 'node:path';
import { connect, type Db, schema } from '@quartermark/db';
import { addDays } from '@quartermark/engine/calendar';
import { and, eq } from 'drizzle-orm';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Caller, cookieOf, type House, house } from '../support/api-house.ts';
import { eventually } from '../support/eventually.ts';
import { clockAt, workerOn } from '../support/jobs-worker.ts';

/**
 * Thirty nights of the demo garage through the real database, engine and worker, held against letters that are
 * written down. Nobody records anything meanwhile: what changes is the day.
 */
const FIRST = '2026-06-15';
const NIGHTS = 30;
const FILE = path.resolve(import.meta.dirname, '../reference/data/demo-nights.json');

/** What came of one night; null: no letter. */
type Told = { subject: string; lines: string[]; more: number } | null;
type Night = { date: string; letter: Told };

let at: House;
let owner: Db;
let demo: Caller;
const clock = clockAt(`${FIRST}T06:00:00Z`);

beforeAll(async () => {
  at = await house('letters demo nights', () => clock.now());
  owner = connect(at.database.ownerUrl, { max: 1 });
  demo = at.caller(cookieOf(await at.post('/setup/demo', { token: at.token })));
});
afterAll(async () => {
  await owner?.close();
  await at?.close();
});

test('thirty nights of the demo garage give the letters that are written down', async () => {
  const [garage] = await demo.garage.mine();
  if (!garage) throw new Error('there is no demo garage');
  const garageId = garage.id;
  const worker = workerOn(at.database, null, { clock, pace: { tickMs: 50 } });
  const nights: Night[] = [];
  try {
    await worker.ready;
    for (let night = 0; night < NIGHTS; night += 1) {
      const date = addDays(FIRST, night);
      // 04:00 in Berlin, where the demo garage stands
      if (night > 0) clock.set(`${date}T02:00:00Z`);
      await eventually(`the night of ${date}`, () => isComposed(garageId, date));
      nights.push({ date, letter: await toldOn(garageId, date) });
    }
  } finally {
    await worker.stop();
  }
  const written = JSON.parse(readFileSync(FILE, 'utf8')) as { nights: Night[] };
  expect(nights).toEqual(written.nights);
}, 120_000);

/** Asked of the table: what comes tonight would be composed anew each time, beside the worker that is waited for. */
async function isComposed(garageId: string, date: string): Promise<boolean> {
  const { digest } = schema;
  const rows = await owner.orm
    .select({ date: digest.date })
    .from(digest)
    .where(and(eq(digest.garageId, garageId), eq(digest.date, date)));
  return rows.length === 1;
}

async function toldOn(garageId: string, date: string): Promise<Told> {
  const { rows } = await demo.letter.list({ garageId });
  const row = rows.find((one) => one.date === date);
  if (!row) return null;
  const { letter } = await demo.letter.view({ garageId, letterId: row.letterId });
  const lines = letter.lines.map(({ word, text }) => `${word}. ${text}`);
  return { subject: letter.subject, lines, more: letter.rest?.count ?? 0 };
}
