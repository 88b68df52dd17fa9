import { type Book, book } from '../log/book.ts';
import { FileShapeError } from './file-shape-error.ts';
import { isLoose, type Loose, shortly } from './odd-values.ts';

const SHOWN_PROBLEMS = 10;

function valueAt(file: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((at, key) => {
    if (Array.isArray(at)) return at[Number(key)];
    return isLoose(at) ? at[String(key)] : undefined;
  }, file);
}

function written(path: readonly PropertyKey[]): string {
  const parts = path.map((key) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`));
  return parts.join('').replace(/^\./, '') || 'the file';
}

/**
 * Reads a `log/1` book.
 *
 * @throws FileShapeError naming path, value and mend of each value that is refused, ten at most
 */
export function readBook(file: Loose): Book {
  const parsed = book.safeParse(file);
  if (parsed.success) return parsed.data;
  const { issues } = parsed.error;
  const lines = issues.slice(0, SHOWN_PROBLEMS).map(({ path, message }) => {
    const value = valueAt(file, path);
    const found = value === undefined ? 'is missing' : `is ${shortly(value)}`;
    return `${written(path)} ${found}: ${message}`;
  });
  const more = issues.length - lines.length;
  const rest = more > 0 ? [`and ${more} more`] : [];
  throw new FileShapeError(`could not read the book:\n  ${[...lines, ...rest].join('\n  ')}`);
}
