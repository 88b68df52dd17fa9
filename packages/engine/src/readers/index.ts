export * from './analyse-book.ts';
export * from './analyse-file.ts';
export * from './file-shape-error.ts';
export type { OilResult } from './oil-log.ts';
export { type OilPastEntry, oilPast } from './oil-past.ts';
export { readBook } from './read-book.ts';
