export * from './analyse-book.ts';
export * from './analyse-file.ts';
export * from './file-shape-error.ts';
export type { OilResult } from './oil-log.ts';
export { type OilPastEntry, oilPast } from './oil-past.ts';
export {
  type LevelBand,
  type OilStory,
  oilStory,
  type StoryEntry,
  type StoryLevel,
} from './oil-story.ts';
export { type OilYearAgo, oilYearAgo } from './oil-year-ago.ts';
export { readBook } from './read-book.ts';
