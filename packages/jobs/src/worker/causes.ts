const CAUSE_MAX = 500;

const KNOWN: ReadonlyArray<[test: RegExp, words: string]> = [
  [
    /ECONNREFUSED|ECONNRESET|CONNECTION_(CLOSED|ENDED|DESTROYED)|57P0[123]|terminating connection/,
    'the database could not be reached; it is tried again by itself',
  ],
  [/^job stalled/, 'the worker stopped several times while it worked on this car'],
];

/**
 * Why a recompute failed, in words for the person who looks after the car. What is known is said
 * plainly; anything else is quoted, because it is the only lead there is.
 */
export function causeOf(error: unknown): string {
  const said = sayings(error).join(': ');
  const known = KNOWN.find(([test]) => test.test(said));
  return known ? known[1] : said.slice(0, CAUSE_MAX);
}

/** The messages of an error and of what caused it, outermost first; a query's text helps nobody here. */
function sayings(error: unknown): string[] {
  if (!(error instanceof Error)) return [String(error)];
  if (error.message.startsWith('Failed query') && error.cause) return sayings(error.cause);
  const code = 'code' in error && typeof error.code === 'string' ? ` (${error.code})` : '';
  return [`${error.message}${code}`, ...(error.cause === undefined ? [] : sayings(error.cause))];
}
