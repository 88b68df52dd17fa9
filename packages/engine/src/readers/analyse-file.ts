import { ENGINE_VERSION } from '../engine-version.ts';
import { type Analysis, analyseCase, sortFlags } from '../wear/index.ts';
import { analyseBook } from './analyse-book.ts';
import { dueCase } from './due-case.ts';
import { fileShape } from './file-shape.ts';
import type { Loose } from './odd-values.ts';
import { type OilResult, oilLog } from './oil-log.ts';
import { readBook } from './read-book.ts';

/** A `due/1` file has no levels. */
export type DueDocument = Omit<Analysis, 'lastLevel'>;

/** An `oil/1` file has no items; without `asOf` it speaks of its last entry. */
export type OilDocument = {
  schema: 1;
  engineVersion: number;
  car: string;
  asOf?: string;
  oil: OilResult;
};

export type AnalyseDocument = Analysis | DueDocument | OilDocument;

function due(content: Loose): DueDocument {
  const { car, flags } = dueCase(content);
  const { lastLevel: _, ...analysis } = analyseCase(car);
  return { ...analysis, flags: sortFlags([...analysis.flags, ...flags]) };
}

function oil(content: Loose): OilDocument {
  const { car, asOf, oil: result } = oilLog(content);
  return { schema: 1, engineVersion: ENGINE_VERSION, car, ...(asOf && { asOf }), oil: result };
}

/**
 * Analyses a log file of any of the three shapes; what a shape has no data for is left out. In `due/1`
 * and `oil/1` files a value that cannot be used becomes a flag or a note; in `log/1`, which the app
 * writes itself, it is refused.
 *
 * @param json what `JSON.parse` gave
 * @throws FileShapeError where the shape is none of the three, or a `log/1` value is refused
 */
export function analyseFile(json: unknown): AnalyseDocument {
  const { shape, content } = fileShape(json);
  switch (shape) {
    case 'log/1':
      return analyseBook(readBook(content));
    case 'oil/1':
      return oil(content);
    case 'due/1':
      return due(content);
  }
}
