import http from 'node:http';
import https from 'node:https';
import type { Certificate } from './certificate.ts';

export type Front = { close(): Promise<void> };

/** Headers that concern one connection only (RFC 9110, 7.6.1). */
const OF_ONE_HOP = [
  'connection',
  'keep-alive',
  'proxy-connection',
  'te',
  'transfer-encoding',
  'upgrade',
];

const STARTING_AGAIN =
  'Quartermark does not answer at the moment: its web part may be starting again. Try again in a few seconds.\n';

/**
 * Ends TLS in front of the web app: every byte is handed on as it comes, both ways, so that a photo needs
 * no room here and a live line is told of a change when it happens.
 *
 * @param inner port of the web app on 127.0.0.1
 */
export async function startFront(
  certificate: Certificate,
  outer: { host: string; port: number },
  inner: number,
): Promise<Front> {
  const agent = new http.Agent({ keepAlive: true });
  const server = https.createServer(
    { ...certificate, minVersion: 'TLSv1.2' },
    (request, response) => handOn(request, response, { agent, port: inner }),
  );
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(outer.port, outer.host, () => resolve());
  });
  return {
    async close() {
      const closed = new Promise((resolve) => server.close(resolve));
      server.closeAllConnections();
      await closed;
      agent.destroy();
    },
  };
}

function handOn(
  request: http.IncomingMessage,
  response: http.ServerResponse,
  to: { agent: http.Agent; port: number },
): void {
  const onward = http.request({
    host: '127.0.0.1',
    port: to.port,
    agent: to.agent,
    method: request.method,
    path: request.url,
    headers: headersFor(request),
    setHost: false,
  });
  onward.on('response', (answer) => {
    response.writeHead(answer.statusCode ?? 502, ownHeaders(answer.headers));
    // a live line's head must not wait for its first event
    response.flushHeaders();
    answer.pipe(response);
    answer.once('error', () => response.destroy());
  });
  onward.once('error', () => {
    if (response.headersSent) return response.destroy();
    response.writeHead(502, { 'content-type': 'text/plain; charset=utf-8', 'retry-after': '3' });
    response.end(STARTING_AGAIN);
  });
  // whoever hangs up is not waited for
  response.once('close', () => onward.destroy());
  request.once('error', () => onward.destroy());
  request.pipe(onward);
}

/** The request's headers; where it came from is said anew, whatever the sender claimed. */
function headersFor(request: http.IncomingMessage): http.OutgoingHttpHeaders {
  const headers = ownHeaders(request.headers);
  for (const name of Object.keys(headers))
    if (name === 'forwarded' || name.startsWith('x-forwarded-')) delete headers[name];
  // a body without a length is still a body
  if (request.headers['transfer-encoding']) headers['transfer-encoding'] = 'chunked';
  return {
    ...headers,
    'x-forwarded-proto': 'https',
    'x-forwarded-host': request.headers.host ?? '',
    'x-forwarded-for': request.socket.remoteAddress ?? '',
  };
}

function ownHeaders(headers: http.IncomingHttpHeaders): http.OutgoingHttpHeaders {
  const named = String(headers.connection ?? '')
    .toLowerCase()
    .split(/\s*,\s*/);
  const kept = Object.entries(headers).filter(
    ([name]) => !OF_ONE_HOP.includes(name) && !named.includes(name),
  );
  return Object.fromEntries(kept);
}
