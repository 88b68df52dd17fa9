/**
 * Whether a request was sent by a page of ours. A browser names the page's origin with every POST; what
 * names none is no browser's page, and carries no cookie that its owner did not give it.
 *
 * Compared is the host with its port, because TLS may end in front of this process.
 *
 * @param origin header `Origin`
 * @param host header `Host`, known to be ours
 */
export function sameOrigin(origin: string | null, host: string | null): boolean {
  if (origin === null) return true;
  return URL.canParse(origin) && new URL(origin).host === host;
}
