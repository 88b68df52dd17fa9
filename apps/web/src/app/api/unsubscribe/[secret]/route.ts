import { answerUnsubscribe } from '@quartermark/api/server';
import { api } from '../../../../server/api.ts';

export const dynamic = 'force-dynamic';

type Place = { params: Promise<{ secret: string }> };

/** A mail program asks without signing in, and from nowhere: the address is the key. */
async function answer(request: Request, { params }: Place): Promise<Response> {
  const { secret } = await params;
  return answerUnsubscribe(api().createContext(request).world, request, secret);
}

export { answer as GET, answer as POST };
