import { serviceWorker } from '../../server/service-worker.ts';

export const dynamic = 'force-dynamic';

/** At the root, because a service worker answers for the paths below its own. */
export function GET(): Response {
  return new Response(serviceWorker(), {
    headers: {
      'content-type': 'text/javascript; charset=utf-8',
      // the browser asks at each visit whether there is a new version
      'cache-control': 'no-cache',
    },
  });
}
