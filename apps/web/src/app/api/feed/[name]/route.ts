import { answerFeed } from '@quartermark/api/server';
import { env } from '../../../../env.ts';
import { api } from '../../../../server/api.ts';

export const dynamic = 'force-dynamic';

type Place = { params: Promise<{ name: string }> };

/** A calendar program asks without signing in: the address is the key. */
export async function GET(request: Request, { params }: Place): Promise<Response> {
  const { name } = await params;
  return answerFeed(api().createContext(request).world, request, name, env().origin);
}
