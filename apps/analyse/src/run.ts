import { type AnalyseDocument, analyseFile, FileShapeError } from '@quartermark/engine';
import { prettyCanonical } from './pretty-canonical.ts';

export type Outcome = { stdout: string; stderr: string; exitCode: number };

const USAGE = `Usage: npm run analyse -- FILE [--history]
  FILE       a log as JSON: a book ("format": "log/1"), "schema": 1, or an oil logbook
  --history  adds how the log was read: order, readings kept, use by day
`;

const FAILED = 2;

function failed(message: string): Outcome {
  return { stdout: '', stderr: `${message}\n`, exitCode: FAILED };
}

function reasonOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

type Attempt<T> = { value: T } | { failure: Outcome };

function attempt<T>(act: () => T, said: (reason: string) => string): Attempt<T> {
  try {
    return { value: act() };
  } catch (error) {
    return { failure: failed(said(reasonOf(error))) };
  }
}

function analyse(json: unknown, file: string, history: boolean): Outcome {
  let document: AnalyseDocument;
  try {
    document = analyseFile(json, { history });
  } catch (error) {
    if (!(error instanceof FileShapeError)) throw error;
    return failed(`${file}: ${error.message}`);
  }
  return { stdout: prettyCanonical(document), stderr: '', exitCode: 0 };
}

/**
 * The command: one JSON document for one file, or what went wrong, where, and how to mend it.
 *
 * @param args what was typed after the command
 * @param readText reads a file as UTF-8, throws where it cannot
 */
export function run(args: readonly string[], readText: (file: string) => string): Outcome {
  const unknown = args.find((arg) => arg.startsWith('-') && arg !== '--history');
  if (unknown !== undefined) return failed(`unknown option ${unknown}\n${USAGE}`);
  const files = args.filter((arg) => !arg.startsWith('-'));
  const [file] = files;
  if (file === undefined || files.length > 1)
    return failed(`expected one file, got ${files.length}\n${USAGE}`);

  const text = attempt(
    () => readText(file),
    (reason) =>
      `could not open ${file}: ${reason}. Check the path; it is taken from the folder the command runs in.`,
  );
  if ('failure' in text) return text.failure;
  const json = attempt<unknown>(
    () => JSON.parse(text.value.replace(/^\uFEFF/, '')),
    (reason) => `${file} is no JSON: ${reason}. Mend it at that place, or export the log again.`,
  );
  if ('failure' in json) return json.failure;
  return analyse(json.value, file, args.includes('--history'));
}
