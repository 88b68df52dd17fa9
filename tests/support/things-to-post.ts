import { randomUUID } from 'node:crypto';
import {
  connect,
  type Db,
  insertDelivery,
  insertDigest,
  insertLetter,
  type MailSetting,
  schema,
  wakeWorker,
  withGarage,
} from '@quartermark/db';
import { type LetterWish, WISH_USUAL } from '@quartermark/digest';
import { and, eq, sql } from 'drizzle-orm';
import type { FreshDatabase } from './database.ts';
import type { JobsGarage } from './jobs-garage.ts';

export const HOOK_SECRET = 'key-for-tests-only-0123456789abcdef';
export const UNSUBSCRIBE_SECRET = 'u'.repeat(43);
const MADE_AT = new Date('2026-03-10T05:00:00Z');

export type LetterRow = typeof schema.letter.$inferSelect;
type Parts = Partial<Pick<LetterRow, 'body' | 'text' | 'html' | 'date'>>;

/** What is to leave a garage, written as composing and the settings write it, and what became of it. */
export class ThingsToPost {
  private readonly job: Db;
  private readonly owner: Db;
  constructor(
    database: FreshDatabase,
    private readonly garage: JobsGarage,
  ) {
    this.job = connect(database.jobUrl, { max: 2, role: 'job' });
    this.owner = connect(database.ownerUrl, { max: 1 });
  }

  close = async (): Promise<void> => {
    await Promise.all([this.job.close(), this.owner.close()]);
  };

  /** Names the garage's mail server and webhook; null: none of it. */
  setPost(mail: Partial<MailSetting> | null, hookUrl: string | null = null): Promise<unknown> {
    const { id: garageId, userId: changedBy } = this.garage;
    const usual = { host: '127.0.0.1', encryption: 'ifOffered' as const, user: null };
    const set = {
      mail: mail && { port: 25, from: 'garage@house.test', ...usual, ...mail },
      hookUrl,
      hookSecret: hookUrl && HOOK_SECRET,
    };
    const { postSetting } = schema;
    return this.garage.inside((tx) =>
      tx
        .insert(postSetting)
        .values({ garageId, changedAt: MADE_AT, changedBy, ...set })
        .onConflictDoUpdate({ target: postSetting.garageId, set }),
    );
  }

  /** What the owner wants otherwise than usual. */
  async wish(other: Partial<LetterWish>): Promise<void> {
    const { id: garageId, userId } = this.garage;
    const { letterSetting } = schema;
    const body = { ...WISH_USUAL, ...other };
    await this.garage.inside((tx) =>
      tx
        .insert(letterSetting)
        .values({ garageId, userId, body, changedAt: MADE_AT, changedBy: userId })
        .onConflictDoUpdate({
          target: [letterSetting.garageId, letterSetting.userId],
          set: { body },
        }),
    );
  }

  /** A letter of the owner's for a date, due at once. @returns the id of its delivery */
  async letter(to: string, parts: Parts = {}): Promise<string> {
    const { id: garageId, userId } = this.garage;
    const [id, letterId, date] = [randomUUID(), randomUUID(), parts.date ?? nextDate()];
    const body = { ...BODY, date };
    await withGarage(this.job, { kind: 'job' }, garageId, async (tx) => {
      await insertDigest(tx, { garageId, date, composedAt: MADE_AT, sendAt: MADE_AT });
      const text = '▲ Overdue. Grey wagon: engine oil.\r\n';
      const html = '<!doctype html><p>▲ Overdue. Grey wagon: engine oil.</p>\r\n';
      const unsubscribeSecret = UNSUBSCRIBE_SECRET;
      const whole = { body, text, html, unsubscribeSecret, ...parts };
      await insertLetter(tx, { garageId, id: letterId, userId, said: [], ...whole, date });
      const made = { messageId: `<letter.${id}@garage.example>`, madeAt: MADE_AT };
      const row = { garageId, id, kind: 'letter' as const, letterId, toAddress: to, ...made };
      await insertDelivery(tx, row, MADE_AT);
    });
    return id;
  }

  /** A test letter that the owner asked for, as the web writes it. */
  async test(to: string): Promise<string> {
    const { id: garageId, userId: madeBy } = this.garage;
    const id = randomUUID();
    const made = { madeBy, madeAt: MADE_AT, messageId: `<test.${id}@garage.example>` };
    await this.garage.inside(async (tx) => {
      await insertDelivery(tx, { garageId, id, kind: 'test', toAddress: to, ...made }, MADE_AT);
      await wakeWorker(tx);
    });
    return id;
  }

  async hook(payload: Record<string, unknown>): Promise<string> {
    const { id: garageId } = this.garage;
    const id = randomUUID();
    await withGarage(this.job, { kind: 'job' }, garageId, (tx) =>
      insertDelivery(tx, { garageId, id, kind: 'hook', payload, madeAt: MADE_AT }, MADE_AT),
    );
    return id;
  }

  /** How a delivery stands, and when it is tried next (null: never). */
  async stands(id: string) {
    const { delivery, deliveryDue } = schema;
    const [row] = await this.garage.inside((tx) =>
      tx
        .select({
          state: delivery.state,
          tries: delivery.tries,
          words: delivery.words,
          answerLost: delivery.answerLost,
          dueAt: deliveryDue.dueAt,
        })
        .from(delivery)
        .leftJoin(deliveryDue, eq(deliveryDue.id, delivery.id))
        .where(and(eq(delivery.garageId, this.garage.id), eq(delivery.id, id))),
    );
    if (row === undefined) throw new Error(`there is no delivery ${id}`);
    return row;
  }

  /** As if so much time had passed for all that is due. */
  async passTime(interval: string): Promise<void> {
    const { deliveryDue } = schema;
    await this.owner.orm
      .update(deliveryDue)
      .set({ dueAt: sql`${deliveryDue.dueAt} - ${interval}::interval` });
  }
}

const BODY = {
  subject: 'Overdue: engine oil – Grey wagon',
  heading: 'Pebble Lane, 10 March',
  lines: [],
  rest: null,
  standing: null,
};

let dates = 0;
/** A garage has one letter a date and member. */
function nextDate(): string {
  dates += 1;
  return new Date(Date.UTC(2026, 0, dates)).toISOString().slice(0, 10);
}
