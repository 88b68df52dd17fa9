import { findSecretKey, NotYours, stopMail, withGarage } from '@quartermark/db';
import type { World } from '../world.ts';

/**
 * Takes a letter's reader off the mail, by the secret of the address in it, without signing in (RFC 8058). Asked by
 * GET it shows a form and writes nothing: mail programs open addresses before anybody reads them.
 *
 * @param secret last part of the address
 */
export async function answerUnsubscribe(
  world: World,
  request: Request,
  secret: string,
): Promise<Response> {
  try {
    return await answer(world, request, secret);
  } catch (error) {
    world.log.error({ err: error }, 'somebody could not be taken off the mail');
    return page(
      500,
      'That could not be done just now; nothing was changed. Try again in a minute.',
    );
  }
}

async function answer(world: World, request: Request, secret: string): Promise<Response> {
  const key = await findSecretKey(world.db, 'unsubscribe', secret);
  if (key === null) return page(404, 'There is nothing at this address any more.');
  if (request.method !== 'POST')
    return page(
      200,
      'Letters of this garage come to you by mail.',
      '<form method="post"><button>Send me no more letters by mail</button></form>',
    );
  const { garageId, userId } = key;
  // somebody who has left gets none anyway: it is done, not refused
  await withGarage(world.db, { kind: 'user', userId }, garageId, (tx) =>
    stopMail(tx, garageId, userId, world.clock.now()),
  ).catch((error: unknown) => {
    if (!(error instanceof NotYours)) throw error;
  });
  return page(200, 'No more letters come by mail. They still lie in the garage.');
}

function page(status: number, words: string, form = ''): Response {
  const html = `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark"><title>Letters by mail</title></head>
<body><main><h1>Letters by mail</h1><p>${words}</p>${form}</main></body></html>
`;
  const headers = { 'content-type': 'text/html; charset=utf-8', 'cache-control': 'no-store' };
  return new Response(html, { status, headers });
}
