import { connect, type Db, schema, withGarage } from '@quartermark/db';
import { addDays } from '@quartermark/engine/calendar';
import { eq } from 'drizzle-orm';
import { Redis } from 'ioredis';
import { simpleParser } from 'mailparser';
import type { FreshDatabase } from './database.ts';
import { eventually } from './eventually.ts';
import type { JobsGarage } from './jobs-garage.ts';
import { JobsLedger } from './jobs-ledger.ts';
import { MailServerProcess } from './mail-server.ts';
import type { TestRedis } from './redis.ts';
import { ThingsToPost } from './things-to-post.ts';
import { WorkerProcess, workerEnv } from './worker-process.ts';

export const KILL_POINTS = ['composed', 'claimed', 'accepted'] as const;
export type KillPoint = (typeof KILL_POINTS)[number];

const MOST_MS = 60_000;

/** Nights of a garage whose letter goes to a real mail server, in which the worker is killed. */
export class KilledNights {
  private day = '2026-03-09';
  private readonly job: Db;
  private constructor(
    private readonly at: FreshDatabase,
    private readonly redis: TestRedis | null,
    private readonly garage: JobsGarage,
    private readonly mail: MailServerProcess,
    private readonly things: ThingsToPost,
    private readonly ledger: JobsLedger,
  ) {
    this.job = connect(at.jobUrl, { max: 1, role: 'job' });
  }

  /** @param garage with a car that something is to be told of every night */
  static async open(at: FreshDatabase, redis: TestRedis | null, garage: JobsGarage) {
    const mail = await MailServerProcess.start();
    const things = new ThingsToPost(at, garage);
    await things.setPost({ port: mail.port });
    await things.wish({ onlyIfNew: false });
    await garage.addCar();
    return new KilledNights(at, redis, garage, mail, things, new JobsLedger(at));
  }

  async close(): Promise<void> {
    await this.mail.stop();
    await Promise.all([this.things.close(), this.ledger.close(), this.job.close()]);
  }

  /**
   * A night in which the worker dies at a point, and the next one carries on.
   *
   * @returns what the mail server got, and what the row says of it
   */
  async killAt(point: KillPoint) {
    this.day = addDays(this.day, 1);
    const before = this.mail.letters.length;
    await this.ledger.letterDay(this.garage.id, addDays(this.day, -1));
    await this.forgetQueue();
    const killed = this.start({ QUARTERMARK_PAUSE_AT: point });
    try {
      await killed.says(`paused at ${point}`);
    } finally {
      await killed.kill('SIGKILL');
    }
    const atDeath = this.mail.letters.length - before;
    // as if the lease were over
    await this.things.passTime('11 minutes');
    const next = this.start();
    try {
      const row = await eventually('the letter to be delivered', () => this.delivered(), MOST_MS);
      const sent = await Promise.all(
        this.mail.letters.slice(before).map(({ mail }) => simpleParser(mail)),
      );
      const ids = sent.map(({ messageId }) => messageId);
      return { day: this.day, atDeath, ids, ...row };
    } finally {
      await next.kill('SIGKILL');
    }
  }

  private start(more: Record<string, string> = {}): WorkerProcess {
    return new WorkerProcess(
      workerEnv(this.at, this.redis, {
        QUARTERMARK_TODAY: this.day,
        POST_ALLOW_PRIVATE: '127.0.0.0/8',
        POST_ALLOW_PORTS: `smtp:${this.mail.port}`,
        ...more,
      }),
    );
  }

  /** The one delivery of the night, once it has arrived. */
  private async delivered() {
    const { delivery, letter } = schema;
    const rows = await withGarage(this.job, { kind: 'job' }, this.garage.id, (tx) =>
      tx
        .select({
          state: delivery.state,
          tries: delivery.tries,
          answerLost: delivery.answerLost,
          messageId: delivery.messageId,
        })
        .from(delivery)
        .innerJoin(letter, eq(letter.id, delivery.letterId))
        .where(eq(letter.date, this.day)),
    );
    if (rows.length > 1) throw new Error(`${rows.length} letters for ${this.day}`);
    const [row] = rows;
    return row?.state === 'delivered' && row;
  }

  /** The tick comes at once with a new queue, else within minutes. */
  private async forgetQueue(): Promise<void> {
    if (this.redis === null) return this.ledger.emptyQueue();
    const redis = new Redis(this.redis.url);
    await redis.flushall();
    redis.disconnect();
  }
}
