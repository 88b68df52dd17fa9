import type { EntryOf } from '@quartermark/engine/log';

/** What was done for storage, and is to be undone before the car wakes. */
export type StorageLine = NonNullable<EntryOf<'layUp'>['lines']>[number];

export const sameLine = (one: StorageLine, other: StorageLine): boolean =>
  one.what === other.what && one.how === other.how;

export const HOW_WORDS: Readonly<Record<StorageLine['how'], string>> = {
  disconnected: 'disconnected',
  plugged: 'plugged',
  drained: 'drained',
  blownUp: 'blown up',
  covered: 'covered',
  other: 'see to it',
};

/** @example lineWords({ what: 'Battery', how: 'disconnected' }) // "Battery: disconnected" */
export const lineWords = ({ what, how }: StorageLine): string =>
  how === 'other' ? what : `${what}: ${HOW_WORDS[how]}`;

/** What is done to most cars that are put away (common practice, no source). */
export const READY_LINES: readonly StorageLine[] = [
  { what: 'Battery', how: 'disconnected' },
  { what: 'Tyres', how: 'blownUp' },
  { what: 'Exhaust openings', how: 'plugged' },
  { what: 'Air intake', how: 'plugged' },
  { what: 'Fuel tank', how: 'drained' },
  { what: 'Fuel tank full, with stabiliser', how: 'other' },
  { what: 'Car', how: 'covered' },
  { what: 'Handbrake off, wheels chocked', how: 'other' },
];

export const HOW_OPTIONS = [
  { value: 'other', words: 'In words' },
  { value: 'disconnected', words: 'Disconnected' },
  { value: 'plugged', words: 'Plugged' },
  { value: 'drained', words: 'Drained' },
  { value: 'blownUp', words: 'Blown up' },
  { value: 'covered', words: 'Covered' },
] as const satisfies readonly { value: StorageLine['how']; words: string }[];
