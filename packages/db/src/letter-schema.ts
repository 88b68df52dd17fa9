import type { Letter, LetterWish, Said } from '@quartermark/digest';
import { sql } from 'drizzle-orm';
import {
  boolean,
  date,
  foreignKey,
  index,
  integer,
  jsonb,
  pgTable,
  primaryKey,
  text,
  unique,
  uuid,
} from 'drizzle-orm/pg-core';
import { changed, garageId, instant, revision } from './columns.ts';

/** Tables of the nightly letter: who wants what, the letters as composed, what leaves the house, calendars. */

/** The garage's mail server, without its password. */
export type MailSetting = {
  host: string;
  port: number;
  encryption: 'implicit' | 'required' | 'ifOffered';
  /** null: no login */
  user: string | null;
  /** the mailbox that letters come from */
  from: string;
};

export const letterSetting = pgTable(
  'letter_setting',
  {
    garageId: garageId(),
    userId: uuid('user_id').notNull(),
    body: jsonb('body').$type<LetterWish>().notNull(),
    revision: revision(),
    ...changed(),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.userId] })],
);

export const postSetting = pgTable('post_setting', {
  garageId: uuid('garage_id').primaryKey(),
  /** minute of the day by the garage's clocks at which letters leave */
  sendMinute: integer('send_minute').notNull().default(360),
  /** null: no mail is sent */
  mail: jsonb('mail').$type<MailSetting>(),
  mailPassword: text('mail_password'),
  /** what may be known of it */
  hasPassword: boolean('has_password').notNull().generatedAlwaysAs(sql`mail_password is not null`),
  /** null: nothing is posted */
  hookUrl: text('hook_url'),
  hookSecret: text('hook_secret'),
  revision: revision(),
  ...changed(),
});

/** The truth about a night: a civil date that has had its letters, silent ones included. */
export const digest = pgTable(
  'digest',
  {
    garageId: garageId(),
    date: date('date').notNull(),
    composedAt: instant('composed_at').notNull(),
    sendAt: instant('send_at').notNull(),
    /** nights before it that nobody composed in */
    missed: integer('missed').notNull().default(0),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.date] })],
);

export const letter = pgTable(
  'letter',
  {
    garageId: garageId(),
    id: uuid('id').notNull(),
    date: date('date').notNull(),
    userId: uuid('user_id').notNull(),
    body: jsonb('body').$type<Omit<Letter, 'said'>>().notNull(),
    said: jsonb('said').$type<Said[]>().notNull(),
    text: text('text').notNull(),
    html: text('html').notNull(),
    /** stands in its address to unsubscribe; null: none was offered */
    unsubscribeSecret: text('unsubscribe_secret'),
    readAt: instant('read_at'),
  },
  (t) => [
    primaryKey({ columns: [t.garageId, t.id] }),
    unique().on(t.garageId, t.date, t.userId),
    index('letter_of_member').on(t.garageId, t.userId, t.date),
    foreignKey({ columns: [t.garageId, t.date], foreignColumns: [digest.garageId, digest.date] }),
  ],
);

/** What leaves the house; tried until it is delivered or given up. */
export const delivery = pgTable(
  'delivery',
  {
    garageId: garageId(),
    id: uuid('id').notNull(),
    kind: text('kind', { enum: ['letter', 'test', 'hook'] }).notNull(),
    letterId: uuid('letter_id'),
    /** of a webhook: what is posted */
    payload: jsonb('payload').$type<Record<string, unknown>>(),
    toAddress: text('to_address'),
    messageId: text('message_id'),
    state: text('state', { enum: ['waiting', 'delivered', 'givenUp'] })
      .notNull()
      .default('waiting'),
    tries: integer('tries').notNull().default(0),
    /** what the server said last, at most 200 characters */
    words: text('words'),
    /** some try ended without an answer: a second copy, of the same Message-ID, may have come */
    answerLost: boolean('answer_lost').notNull().default(false),
    madeAt: instant('made_at').notNull(),
    madeBy: uuid('made_by'),
    settledAt: instant('settled_at'),
  },
  (t) => [
    primaryKey({ columns: [t.garageId, t.id] }),
    index('delivery_by_time').on(t.garageId, t.madeAt),
    foreignKey({ columns: [t.garageId, t.letterId], foreignColumns: [letter.garageId, letter.id] }),
  ],
);

/** A fact of which nobody wants to hear up to a day. */
export const putOff = pgTable(
  'put_off',
  {
    garageId: garageId(),
    fact: text('fact').notNull(),
    until: date('until').notNull(),
    grade: integer('grade').notNull(),
    putAt: instant('put_at').notNull(),
    putBy: uuid('put_by').notNull(),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.fact] })],
);

/** A member's private calendar address. */
export const feed = pgTable(
  'feed',
  {
    garageId: garageId(),
    id: uuid('id').notNull(),
    userId: uuid('user_id').notNull(),
    madeAt: instant('made_at').notNull(),
    revokedAt: instant('revoked_at'),
  },
  (t) => [primaryKey({ columns: [t.garageId, t.id] })],
);

/** What calendars were told of an entry, so that a change is known as one. */
export const feedPublished = pgTable(
  'feed_published',
  {
    garageId: garageId(),
    feedId: uuid('feed_id').notNull(),
    uid: text('uid').notNull(),
    print: text('print').notNull(),
    sequence: integer('sequence').notNull(),
    modifiedAt: instant('modified_at').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.garageId, t.feedId, t.uid] }),
    foreignKey({ columns: [t.garageId, t.feedId], foreignColumns: [feed.garageId, feed.id] }),
  ],
);

// ---- without row-level security: ids, times and hashes only, granted per role ----

/** What is to leave the house, and when it is tried next. */
export const deliveryDue = pgTable(
  'delivery_due',
  {
    id: uuid('id').primaryKey(),
    garageId: garageId(),
    dueAt: instant('due_at').notNull(),
  },
  (t) => [index('delivery_due_by_time').on(t.dueAt)],
);

/** Addresses that need no sign-in, by the SHA-256 of their secret. */
export const secretKey = pgTable(
  'secret_key',
  {
    hash: text('hash').primaryKey(),
    kind: text('kind', { enum: ['feed', 'unsubscribe'] }).notNull(),
    garageId: garageId(),
    userId: uuid('user_id').notNull(),
    /** the feed or the letter */
    subjectId: uuid('subject_id').notNull(),
  },
  (t) => [index('secret_key_of_subject').on(t.garageId, t.subjectId)],
);
