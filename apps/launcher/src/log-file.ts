import { existsSync, mkdirSync, openSync, readFileSync, renameSync, statSync } from 'node:fs';
import path from 'node:path';

const LIMIT_BYTES = 10 * 1024 * 1024;

export type LogFile = {
  file: string;
  /** to hand to a child, which keeps writing when the launcher is gone */
  fd: number;
  /** what was written since it was opened */
  written(): string;
  /** its last lines, indented, for an error message */
  tail(lines?: number): string;
};

/** Opens `logs/NAME.log`; one that grew long is set aside as `.old`. */
export function openLog(dataDir: string, name: string): LogFile {
  const file = path.join(dataDir, 'logs', `${name}.log`);
  mkdirSync(path.dirname(file), { recursive: true });
  if (existsSync(file) && statSync(file).size > LIMIT_BYTES) renameSync(file, `${file}.old`);
  const fd = openSync(file, 'a');
  const from = statSync(file).size;
  const written = () => readFileSync(file).subarray(from).toString('utf8');
  return {
    file,
    fd,
    written,
    tail: (lines = 12) =>
      written()
        .trim()
        .split('\n')
        .slice(-lines)
        .map((line) => `  ${line}`)
        .join('\n'),
  };
}
