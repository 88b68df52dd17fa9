import type { MailSetting, MailState } from '@quartermark/db';
import type { Letter, LetterWish } from '@quartermark/digest';
import type { GarageView, Written } from './views.ts';

export type { LetterWish, MailSetting, MailState };

/** Letters as their reader sees them. Dates are civil dates of the garage, instants ISO in UTC. */
export type LetterRow = {
  letterId: string;
  date: string;
  subject: string;
  /** how many */
  lines: number;
  read: boolean;
  mail: MailState;
};

export type LettersPage = { garage: GarageView; rows: LetterRow[]; next: string | null };

/** A letter as it was composed. */
export type LetterView = {
  garage: GarageView;
  date: string;
  letter: Omit<Letter, 'said'>;
  /** as it left, or would have */
  text: string;
  html: string;
  read: boolean;
  mail: MailState;
  /** nights before it that nobody composed in */
  missed: number;
};

/** The next letter as it would be if it were composed now. */
export type TonightView = {
  garage: GarageView;
  date: string;
  /** whether the present date has had its letters already, so that this is tomorrow's */
  composed: boolean;
  /** null: its hour has passed, so it leaves as soon as it is composed */
  sendsAt: string | null;
  letter: Omit<Letter, 'said'> | null;
  html: string | null;
  /** why there is none */
  why: 'silent' | 'paused' | 'notTonight' | null;
};

export type WishView = {
  garage: GarageView;
  wish: LetterWish;
  /** 0: never said, the usual counts */
  revision: number;
  usual: boolean;
  /** the member's own mail address */
  to: string;
  /** whether the garage sends mail at all */
  canMail: boolean;
  cars: { carId: string; name: string }[];
  /** minute of the day by the garage's clocks */
  sendMinute: number;
};

/** The garage's post without its secrets. */
export type PostView = {
  garage: GarageView;
  sendMinute: number;
  mail: MailSetting | null;
  hasPassword: boolean;
  hookUrl: string | null;
  /** 0: never set */
  revision: number;
};

/** `hookSecret` is shown this once, where a webhook was made; null otherwise, and when asked again. */
export type PostWritten = Written & { hookSecret: string | null };

export type SentRow = {
  deliveryId: string;
  kind: 'letter' | 'test' | 'hook';
  /** whose letter, or who asked for the test; null: a webhook, or somebody who has left */
  whom: string | null;
  date: string;
  mail: MailState;
};

export type SentPage = { garage: GarageView; rows: SentRow[]; next: string | null };

/** A fact that is not told up to a day. */
export type PutOffRow = { fact: string; until: string };
export type PutOffView = { garage: GarageView; rows: PutOffRow[] };

/** When the asker's private calendar was made; null: there is none. */
export type FeedView = { made: string | null };

/** `path` of the calendar's address is shown this once; null where the same was sent before. */
export type FeedWritten = Written & { path: string | null };
