'use client';

import { useSyncExternalStore } from 'react';
import { SEEN_COOKIE, withSeen } from './seen.ts';

const YEAR_S = 31_536_000;
const watchers = new Set<() => void>();

function watch(onChange: () => void): () => void {
  watchers.add(onChange);
  return () => watchers.delete(onChange);
}

function held(): string {
  const start = `${SEEN_COOKIE}=`;
  const found = document.cookie.split('; ').find((pair) => pair.startsWith(start));
  return found?.slice(start.length) ?? '';
}

function layAside(fact: { carId: string; key: string }): void {
  const value = withSeen(held(), fact);
  // biome-ignore lint/suspicious/noDocumentCookie: the Cookie Store API needs a secure context
  document.cookie = `${SEEN_COOKIE}=${value}; path=/; max-age=${YEAR_S}; samesite=lax`;
  for (const told of watchers) told();
}

/** What this browser laid aside, and the way to lay one more aside. @param painted as the server had it */
export function useSeen(painted: string): [string, (fact: { carId: string; key: string }) => void] {
  return [useSyncExternalStore(watch, held, () => painted), layAside];
}
