import { ENGINE_VERSION } from '../engine-version.ts';
import { type Analysis, analyseCase, type CaseAnalysis, sortFlags } from '../wear/index.ts';
import { analyseBook } from './analyse-book.ts';
import { bookCase } from './book-case.ts';
import { bookEvents, type EventDocument } from './book-events.ts';
import { dueCase } from './due-case.ts';
import { fileShape } from './file-shape.ts';
import { type HistoryDocument, historyDocument } from './history-document.ts';
import type { Loose } from './odd-values.ts';
import { type OilLog, type OilResult, oilLog } from './oil-log.ts';
import { type OilPastEntry, oilPast } from './oil-past.ts';
import { readBook } from './read-book.ts';

type WithHistory = { history?: HistoryDocument & { oil?: OilPastEntry[] } };

/** A `due/1` file has no levels and no findings. */
export type DueDocument = CaseAnalysis & WithHistory;

/** An `oil/1` file has no items; without `asOf` it speaks of its last entry. */
export type OilDocument = {
  schema: 1;
  engineVersion: number;
  car: string;
  asOf?: string;
  oil: OilResult;
  history?: { entries: OilLog['order'] };
};

/** A `log/1` file tells all; `events` are those that are not over. */
export type BookDocument = Analysis & WithHistory & { events: EventDocument[] };

export type AnalyseDocument = BookDocument | DueDocument | OilDocument;

export type AnalyseOptions = {
  /** adds the cleaned history: the order of the entries, the readings kept, all use by day, the oil's past */
  history: boolean;
};

const PLAIN: AnalyseOptions = { history: false };

function book(content: Loose, { history }: AnalyseOptions): AnalyseDocument {
  const read = readBook(content);
  const analysis = { ...analyseBook(read, { toEvents: true }), events: bookEvents(read) };
  return history
    ? { ...analysis, history: { ...historyDocument(bookCase(read)), oil: oilPast(read) } }
    : analysis;
}

function due(content: Loose, { history }: AnalyseOptions): DueDocument {
  const { car, flags } = dueCase(content);
  const analysis = analyseCase(car, { toEvents: true });
  const document = { ...analysis, flags: sortFlags([...analysis.flags, ...flags]) };
  return history ? { ...document, history: historyDocument(car) } : document;
}

function oil(content: Loose, { history }: AnalyseOptions): OilDocument {
  const { car, asOf, oil: result, order } = oilLog(content);
  return {
    schema: 1,
    engineVersion: ENGINE_VERSION,
    car,
    ...(asOf === null ? {} : { asOf }),
    oil: result,
    ...(history ? { history: { entries: order } } : {}),
  };
}

/**
 * Analyses a log file of any of the three shapes; what a shape has no data for is left out. In `due/1`
 * and `oil/1` files a value that cannot be used becomes a flag or a note; in `log/1`, which the app
 * writes itself, it is refused.
 *
 * @param json what `JSON.parse` gave
 * @throws FileShapeError where the shape is none of the three, or a `log/1` value is refused
 */
export function analyseFile(json: unknown, options: AnalyseOptions = PLAIN): AnalyseDocument {
  const { shape, content } = fileShape(json);
  switch (shape) {
    case 'log/1':
      return book(content, options);
    case 'oil/1':
      return oil(content, options);
    case 'due/1':
      return due(content, options);
  }
}
