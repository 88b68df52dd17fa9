import { refuse } from './refused.ts';

/** The largest body of a request, in bytes. */
export const BODY_BYTES_MAX = 1024 * 1024;

/**
 * Reads a request's body and counts while it streams, so that an oversized one is given up as soon as it
 * shows, whatever its headers claim.
 *
 * @throws Refused `tooLarge`; the door answers 413
 */
export async function readCapped(
  request: Request,
  maxBytes: number = BODY_BYTES_MAX,
): Promise<Uint8Array<ArrayBuffer>> {
  const tooLarge = () =>
    refuse(
      'tooLarge',
      null,
      `The request is larger than ${Math.floor(maxBytes / 1024)} KB and nothing of it was saved; send it in smaller parts.`,
    );
  if (Number(request.headers.get('content-length') ?? 0) > maxBytes) throw tooLarge();
  const parts: Uint8Array[] = [];
  let bytes = 0;
  const reader = request.body?.getReader();
  for (let part = await reader?.read(); part && !part.done; part = await reader?.read()) {
    bytes += part.value.byteLength;
    if (bytes > maxBytes) {
      await reader?.cancel();
      throw tooLarge();
    }
    parts.push(part.value);
  }
  const whole = new Uint8Array(bytes);
  let offset = 0;
  for (const part of parts) {
    whole.set(part, offset);
    offset += part.byteLength;
  }
  return whole;
}

/** The same request with its body read whole, or the answer that refuses it. */
export async function capped(
  request: Request,
  maxBytes: number = BODY_BYTES_MAX,
): Promise<Request | Response> {
  if (request.method === 'GET' || request.method === 'HEAD') return request;
  try {
    const body = await readCapped(request, maxBytes);
    const { method, headers, signal } = request;
    return new Request(request.url, { method, headers, body, signal });
  } catch (error) {
    if (error instanceof Error && 'refusal' in error)
      return Response.json({ message: error.message, refusal: error.refusal }, { status: 413 });
    throw error;
  }
}
