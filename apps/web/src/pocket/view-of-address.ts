'use client';

import { useMemo, useSyncExternalStore } from 'react';

/** The seven things that are recorded fast, in the order in which they stand. */
export const FAST = [
  'oilCheck',
  'oilTopUp',
  'session',
  'wheels',
  'fuel',
  'finding',
  'odometer',
] as const;
export type Fast = (typeof FAST)[number];

/** What the pocket page shows; it stands behind the # of its address, so that "back" goes back. */
export type View = 'home' | 'cars' | 'waiting' | 'more' | 'event' | 'paper' | Fast;

const VIEWS: readonly View[] = ['home', 'cars', 'waiting', 'more', 'event', 'paper', ...FAST];

function watch(onChange: () => void): () => void {
  window.addEventListener('hashchange', onChange);
  window.addEventListener('popstate', onChange);
  return () => {
    window.removeEventListener('hashchange', onChange);
    window.removeEventListener('popstate', onChange);
  };
}

const here = (): View => VIEWS.find((view) => view === window.location.hash.slice(1)) ?? 'home';

export function useView(): View {
  return useSyncExternalStore(watch, here, () => 'home');
}

export function goTo(view: View): void {
  window.location.hash = view;
}

/** What the address asks for, beside the view: a car from a label, a page that had no signal. */
export type Asked = { carId: string | null; wanted: string | null };

/** Null before the page is in a browser: until then it is the same for everybody. */
export function useAsked(): Asked | null {
  const search = useSyncExternalStore(
    watch,
    () => window.location.search,
    () => null,
  );
  return useMemo(() => (search === null ? null : askedIn(search)), [search]);
}

function askedIn(search: string): Asked {
  const asked = new URLSearchParams(search);
  const wanted = asked.get('wanted');
  // only a path of this very site leads anywhere
  const own = wanted?.startsWith('/') && !wanted.startsWith('//') ? wanted : null;
  return { carId: asked.get('car'), wanted: own };
}
