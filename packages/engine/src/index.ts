export { ENGINE_VERSION } from './engine-version.ts';
export type { Book, BookDraft } from './log/book.ts';
export { canonicalJson } from './log/canonical-json.ts';
export {
  type AnalyseDocument,
  analyseBook,
  analyseFile,
  type DueDocument,
  FileShapeError,
  type LevelBand,
  type OilDocument,
  type OilPastEntry,
  type OilResult,
  type OilStory,
  type OilYearAgo,
  oilPast,
  oilStory,
  oilYearAgo,
  readBook,
  type StoryEntry,
  type StoryLevel,
} from './readers/index.ts';
export * from './wear/result.ts';
