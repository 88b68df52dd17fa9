export { calendarFeed } from './calendar.ts';
export { type FeedCar, type FeedOf, feedEntries } from './feed-entries.ts';
export type { FeedEntry } from './feed-entry.ts';
export { type Published, type RevisedEntry, revise } from './revise.ts';
