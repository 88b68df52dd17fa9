import { randomUUID } from 'node:crypto';
import {
  connect,
  type Db,
  insertDelivery,
  insertDigest,
  insertLetter,
  loadBook,
  replaceDueLines,
  replaceIfLater,
  replaceOilLine,
  SNAPSHOT_SCHEMA,
  schema,
  withGarage,
} from '@quartermark/db';
import type { LetterLine, Said } from '@quartermark/digest';
import { answerOf } from '@quartermark/jobs/worker';
import { eq } from 'drizzle-orm';
import type { Home } from './api-house.ts';
import { roadAsked } from './road-asked.ts';

/** What the worker writes, written here and now: for tests of what the api makes of it. */
async function asWorker<T>(at: Home, work: (job: Db) => Promise<T>): Promise<T> {
  const job = connect(at.database.jobUrl, { max: 1, role: 'job' });
  try {
    return await work(job);
  } finally {
    await job.close();
  }
}

/** Brings a car's snapshot and its lines up to date. */
export function workOut(at: Home, carId: string): Promise<void> {
  const { garageId, today: asOf } = at;
  return asWorker(at, (job) =>
    withGarage(job, { kind: 'job' }, garageId, async (tx) => {
      const { book, inputVersion } = await loadBook(tx, garageId, carId, asOf);
      const answer = answerOf(roadAsked(book));
      const { analysis, road, lines, said: _, oil, ...columns } = answer;
      const versions = { inputVersion, engineVersion: 1, snapshotSchema: SNAPSHOT_SCHEMA, asOf };
      const row = { ...columns, ...versions, garageId, carId, computedAt: new Date() };
      if (!(await replaceIfLater(tx, row, { analysis, road })))
        throw new Error('there is a later snapshot');
      await replaceDueLines(tx, { garageId, carId, apart: answer.status !== 'inUse', lines });
      await replaceOilLine(tx, { garageId, carId, line: oil });
    }),
  );
}

export type KeptLetter = {
  /** whose it is */
  email: string;
  date: string;
  said?: Said[];
  /** what its lines say */
  lines?: string[];
  /** the mailbox it is to leave to, due at its hour; none: it is read here alone */
  mail?: string;
};

/** A letter as it was composed in the night of a date. @returns its id */
export function keepLetter(at: Home, letter: KeptLetter): Promise<string> {
  const { garageId } = at;
  const { email, date, said = [], lines = ['Overdue'], mail } = letter;
  const [id, deliveryId] = [randomUUID(), randomUUID()];
  const sendAt = new Date(`${date}T05:00:00Z`);
  return asWorker(at, (job) =>
    withGarage(job, { kind: 'job' }, garageId, async (tx) => {
      const userId = await idOf(tx, email);
      await insertDigest(tx, { garageId, date, composedAt: sendAt, sendAt, missed: 2 });
      const body = { ...EMPTY, date, subject: `Letter of ${date}`, lines: lines.map(lineOf) };
      const text = `Overdue on ${date}.\r\n`;
      const html = `<!doctype html><p>Overdue on ${date}.</p>\r\n`;
      await insertLetter(tx, { garageId, id, date, userId, body, said, text, html });
      if (mail === undefined) return id;
      const messageId = `<letter.${deliveryId}@garage.example>`;
      const made = { toAddress: mail, messageId, madeAt: sendAt };
      const row = { garageId, id: deliveryId, kind: 'letter' as const, letterId: id, ...made };
      await insertDelivery(tx, row, sendAt);
      return id;
    }),
  );
}

const EMPTY = { heading: 'North shed', rest: null, standing: null };

const lineOf = (text: string): LetterLine => ({
  mark: 'overdue',
  word: 'Overdue',
  text,
  link: { to: 'dueList' },
  more: [],
  car: 'Brindle 2',
  facts: [],
  why: 'new',
});

async function idOf(tx: Parameters<typeof insertLetter>[0], email: string): Promise<string> {
  const { user } = schema;
  const [found] = await tx.select({ id: user.id }).from(user).where(eq(user.email, email));
  if (!found) throw new Error(`nobody has the address ${email}`);
  return found.id;
}
