import { type NextRequest, NextResponse } from 'next/server';
import { isDevelopment, publicHost } from './env.ts';
import { hostAllowed } from './server/host-allowed.ts';
import { PATH_HEADER } from './server/path-header.ts';
import { contentPolicy, PLAIN_HEADERS } from './server/security-headers.ts';

const FOREIGN_HOST =
  'This address is not one Quartermark answers to. Open http://127.0.0.1 with the port that was printed ' +
  'at the start, or set QUARTERMARK_ORIGIN to the address you use and start again.\n';

export function proxy(request: NextRequest): NextResponse {
  if (!hostAllowed(request.headers.get('host'), publicHost())) {
    return new NextResponse(FOREIGN_HOST, {
      status: 421,
      headers: { 'content-type': 'text/plain; charset=utf-8' },
    });
  }
  const nonce = Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString('base64');
  const policy = contentPolicy(nonce, isDevelopment);
  // Next reads the nonce for its own scripts from the request's policy header.
  const headers = new Headers(request.headers);
  headers.set('content-security-policy', policy);
  headers.set(PATH_HEADER, `${request.nextUrl.pathname}${request.nextUrl.search}`);
  const response = NextResponse.next({ request: { headers } });
  response.headers.set('content-security-policy', policy);
  for (const [name, value] of Object.entries(PLAIN_HEADERS)) response.headers.set(name, value);
  return response;
}

// a photo is longer than what the proxy keeps of a body; its own route asks for the host
export const config = { matcher: '/((?!_next/static|_next/image|api/photo/).*)' };
