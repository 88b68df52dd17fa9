import type { Route } from 'next';

/**
 * A path inside this app to go on to, or the start. An address elsewhere, however it is dressed, is not
 * followed: a sign-in page must not send people away.
 */
export function ownPath(asked: string | string[] | undefined): Route {
  if (typeof asked !== 'string' || !asked.startsWith('/')) return '/';
  const base = 'http://here.invalid';
  if (!URL.canParse(asked, base)) return '/';
  const { origin, pathname, search } = new URL(asked, base);
  return origin === base ? (`${pathname}${search}` as Route) : '/';
}
