import { capped } from '@quartermark/api/server';
import { api } from '../../../../server/api.ts';

export const dynamic = 'force-dynamic';

async function answer(request: Request): Promise<Response> {
  const asked = await capped(request);
  return asked instanceof Response ? asked : api().auth.handler(asked);
}

export { answer as GET, answer as POST };
