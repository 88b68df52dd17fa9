import { FileShapeError } from './file-shape-error.ts';
import { isLoose, type Loose, shortly } from './odd-values.ts';

export type FileShape =
  | { shape: 'log/1'; content: Loose }
  | { shape: 'oil/1'; content: Loose }
  | { shape: 'due/1'; content: Loose };

function isOilLog({ car, entries }: Loose): boolean {
  const spanGiven = isLoose(car) && car.spanL !== undefined;
  return spanGiven && Array.isArray(entries) && entries.some((one) => isLoose(one) && 'at' in one);
}

/**
 * Tells which shape a file has; the first that applies: `format: "log/1"`; a member `logbook`, or
 * `car.spanL` with entries that have `at` (`oil/1`); `schema: 1` (`due/1`).
 *
 * @throws FileShapeError for anything else, naming the members found
 */
export function fileShape(file: unknown): FileShape {
  if (!isLoose(file))
    throw new FileShapeError(
      `could not read the file: it holds ${shortly(file)}, it should hold one object in braces`,
    );
  if (file.format === 'log/1') return { shape: 'log/1', content: file };
  if (isLoose(file.logbook)) return { shape: 'oil/1', content: file.logbook };
  if (isOilLog(file)) return { shape: 'oil/1', content: file };
  if (file.schema === 1) return { shape: 'due/1', content: file };
  const members = Object.keys(file).slice(0, 12).map(shortly).join(', ') || 'none';
  const format = 'format' in file ? ` "format" is ${shortly(file.format)}.` : '';
  const schema = 'schema' in file ? ` "schema" is ${shortly(file.schema)}.` : '';
  throw new FileShapeError(
    `could not tell the file's shape; its members: ${members}.${format}${schema} It should have "format": "log/1", a member "logbook", or "schema": 1`,
  );
}
