import { z } from 'zod';

const settings = z.object({
  DATABASE_APP_URL: z.url({
    error: 'DATABASE_APP_URL must be the address of the database for the role app',
  }),
  QUARTERMARK_SECRET: z.string().min(32, 'QUARTERMARK_SECRET must have at least 32 characters'),
  QUARTERMARK_ORIGIN: z
    .url({
      error: 'QUARTERMARK_ORIGIN must be the address people open, such as http://127.0.0.1:3000',
    })
    .optional(),
  PORT: z.coerce.number().int().min(1).max(65_535).default(3000),
  QUARTERMARK_TODAY: z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}$/, 'QUARTERMARK_TODAY must be a date YYYY-MM-DD')
    .optional(),
  QUARTERMARK_PAUSE_AT: z.string().max(32).optional(),
  /** names the start this process belongs to; the launcher gives it */
  QUARTERMARK_RUN: z.string().max(64).optional(),
});

export type Env = z.infer<typeof settings> & { origin: string };

/** Compiled in by the build: only a test build has the clock switch and marked points. */
export const isTestBuild = process.env.TEST_BUILD === '1';
/** Where this build lies, below the app's folder; the same as in next.config.ts. */
export const distFolder = isTestBuild ? '.next-test' : '.next';
export const isDevelopment = process.env.NODE_ENV === 'development';

let read: Env | undefined;

/** The settings of this process, checked once at first use; a build needs none of them. */
export function env(): Env {
  if (read) return read;
  const result = settings.safeParse(process.env);
  if (!result.success)
    throw new Error(`The web app cannot start. ${z.prettifyError(result.error)}`);
  const origin = result.data.QUARTERMARK_ORIGIN ?? `http://127.0.0.1:${result.data.PORT}`;
  read = { ...result.data, origin };
  return read;
}

/** The host of QUARTERMARK_ORIGIN, if that is set; needs no other setting. */
export function publicHost(): string | null {
  const origin = process.env.QUARTERMARK_ORIGIN;
  return origin && URL.canParse(origin) ? new URL(origin).hostname : null;
}
