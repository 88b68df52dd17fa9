/**
 * A file that is none of the shapes that are read, or a `log/1` file with a value that is refused. The
 * message says what was found, where, and how to mend it.
 */
export class FileShapeError extends Error {
  override readonly name = 'FileShapeError';
}
