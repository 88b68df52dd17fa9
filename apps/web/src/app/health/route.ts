import { env } from '../../env.ts';

export const dynamic = 'force-dynamic';

/** That this process serves, and of which start it is: the launcher knows its own child by it. */
export function GET(): Response {
  return Response.json({ serves: true, run: env().QUARTERMARK_RUN ?? null });
}
