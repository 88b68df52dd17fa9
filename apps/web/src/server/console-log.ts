type Fields = Record<string, unknown>;

function line(level: string, fields: Fields, message: string): string {
  const { err, ...rest } = fields;
  const cause = err instanceof Error ? (err.stack ?? err.message) : err;
  return JSON.stringify({ level, at: new Date().toISOString(), message, ...rest, cause });
}

/** One JSON line per event on the process's own output, which the launcher keeps. */
export const consoleLog = {
  warn: (fields: Fields, message: string) => console.warn(line('warn', fields, message)),
  error: (fields: Fields, message: string) => console.error(line('error', fields, message)),
};
