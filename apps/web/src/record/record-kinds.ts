import type { EntryKind } from '@quartermark/engine/log';

/** Kinds of entries that have a form, in the order in which they are offered. */
export const RECORD_KINDS = [
  'oilCheck',
  'oilTopUp',
  'session',
  'drive',
  'fuel',
  'odometer',
  'oilChange',
  'service',
  'strip',
  'note',
] as const satisfies readonly EntryKind[];
export type RecordKind = (typeof RECORD_KINDS)[number];

/** The form a kind is written in; the rest share one for day, odometer and note. */
export type FormKind = RecordKind | 'other';

/** @param text a part of an address */
export function recordKindOf(text: string): RecordKind | null {
  return RECORD_KINDS.find((kind) => kind === text) ?? null;
}

export const KIND_HINT: Readonly<Record<RecordKind, string>> = {
  oilCheck: 'What the stick shows',
  oilTopUp: 'A bottle or any amount',
  session: 'Circuit or autocross',
  drive: 'Road, or a road trip',
  fuel: 'What went into the tank',
  odometer: 'What it shows now',
  oilChange: 'Out, in, and the filter',
  service: 'Items that were done',
  strip: 'Passes on a day',
  note: 'Anything else',
};

/** What the form of a kind asks, as the first line of its page. */
export const KIND_QUESTION: Readonly<Record<RecordKind, string>> = {
  oilCheck: 'Where does the oil stand on the stick?',
  oilTopUp: 'How much oil went in?',
  session: 'How many sessions were driven?',
  drive: 'Where did it go, and how far?',
  fuel: 'How much fuel went in?',
  odometer: 'What does the odometer show?',
  oilChange: 'What went out, and what went in?',
  service: 'What was done?',
  strip: 'How many passes were run?',
  note: 'What is to be remembered?',
};

const USES: readonly EntryKind[] = ['drive', 'session', 'strip'];

/** Whether a kind of entry drives the car, so that its place in the day is told against work on it. */
export function isUse(kind: EntryKind): boolean {
  return USES.includes(kind);
}
