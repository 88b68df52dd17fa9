import type { Said, Why } from './to-tell.ts';

/** One letter to one member, before it is written as text or HTML. What people typed is plain, not escaped. */
export type Letter = {
  /** civil date */
  date: string;
  /** one line of at most 110 characters, which says the most urgent thing */
  subject: string;
  /** the garage and the day */
  heading: string;
  /** the most urgent first */
  lines: LetterLine[];
  /** what found no room: it comes next time; null: everything did */
  rest: { count: number; text: string; link: Link } | null;
  /** how things stand where no line says it; null with lines */
  standing: string | null;
  /** to be stored with the letter, and handed to the next one as `last` */
  said: Said[];
};

export type LetterLine = {
  mark: LetterMark;
  /** the state in words */
  word: string;
  /** what it is about, without a full stop */
  text: string;
  /** the page or the pre-filled form it leads to */
  link: Link;
  /** further forms: parts were ordered, put off */
  more: Link[];
  car: string;
  /** ids of the facts it tells */
  facts: string[];
  why: Why;
};

/** Which mark goes with a line; a word always stands beside it. */
export type LetterMark = 'stop' | 'overdue' | 'soon' | 'unknown' | 'good';

/**
 * Where a link leads: pages and pre-filled forms, by their ids. None of them writes anything when it is opened.
 */
export type Link =
  | { to: 'car'; car: string }
  | { to: 'carOil'; car: string }
  | { to: 'event'; event: string }
  | { to: 'serviceForm'; car: string; items: string[] }
  | { to: 'oilCheckForm'; car: string }
  | { to: 'orderForm'; car: string; items: string[] }
  /** `until` is proposed: the last day without a word of it */
  | { to: 'putOffForm'; facts: string[]; until: string }
  | { to: 'dueList' }
  | { to: 'letterSettings' };

/** The address of a link, http or https, at most 800 characters. */
export type LinkOf = (link: Link) => string;
