import { answerPhoto } from '@quartermark/api/server';
import { publicHost } from '../../../../../env.ts';
import { api } from '../../../../../server/api.ts';
import { hostAllowed } from '../../../../../server/host-allowed.ts';
import { sameOrigin } from '../../../../../server/same-origin.ts';
import { PLAIN_HEADERS } from '../../../../../server/security-headers.ts';

export const dynamic = 'force-dynamic';

type Place = { params: Promise<{ garageId: string; photoId: string }> };

/** Outside of the proxy, which keeps no body of this length: what it asks and adds is done here. */
async function answer(request: Request, place: Place): Promise<Response> {
  const response = await admitted(request, place);
  for (const [name, value] of Object.entries(PLAIN_HEADERS)) response.headers.set(name, value);
  response.headers.set('content-security-policy', "default-src 'none'");
  return response;
}

async function admitted(request: Request, { params }: Place): Promise<Response> {
  const host = request.headers.get('host');
  if (!hostAllowed(host, publicHost()))
    return new Response('This address is not one Quartermark answers to.\n', { status: 421 });
  if (request.method !== 'GET' && !sameOrigin(request.headers.get('origin'), host))
    return new Response('A photo is taken from pages of Quartermark alone.\n', { status: 403 });
  return answerPhoto(api().createContext(request), request, await params);
}

export { answer as GET, answer as POST };
