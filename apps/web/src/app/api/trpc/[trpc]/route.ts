import { capped } from '@quartermark/api/server';
import { fetchRequestHandler } from '@trpc/server/adapters/fetch';
import { api } from '../../../../server/api.ts';

export const dynamic = 'force-dynamic';

async function answer(request: Request): Promise<Response> {
  const asked = await capped(request);
  if (asked instanceof Response) return asked;
  const { appRouter } = api();
  return fetchRequestHandler({
    endpoint: '/api/trpc',
    req: asked,
    router: appRouter,
    createContext: () => api().createContext(asked),
  });
}

export { answer as GET, answer as POST };
