import { answerPhoto } from '@quartermark/api/server';
import { publicHost } from '../../../../../env.ts';
import { api } from '../../../../../server/api.ts';
import { hostAllowed } from '../../../../../server/host-allowed.ts';

export const dynamic = 'force-dynamic';

type Place = { params: Promise<{ garageId: string; photoId: string }> };

/** Outside of the proxy, which keeps no body of this length: the host is asked for here. */
async function answer(request: Request, { params }: Place): Promise<Response> {
  if (!hostAllowed(request.headers.get('host'), publicHost()))
    return new Response('This address is not one Quartermark answers to.\n', { status: 421 });
  return answerPhoto(api().createContext(request), request, await params);
}

export { answer as GET, answer as POST };
