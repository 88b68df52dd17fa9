'use client';

import { useSyncExternalStore } from 'react';
import { THEME_COOKIE, type Theme, themeOf } from './theme.ts';

const YEAR_S = 31_536_000;

function watch(onChange: () => void): () => void {
  const observer = new MutationObserver(onChange);
  observer.observe(document.documentElement, { attributeFilter: ['data-theme'] });
  return () => observer.disconnect();
}

/** The look of this browser, held in a cookie so that the server paints it at once. */
export function useTheme(painted: Theme): [Theme, (theme: Theme) => void] {
  const theme = useSyncExternalStore(
    watch,
    () => themeOf(document.documentElement.dataset.theme),
    () => painted,
  );
  return [theme, choose];
}

function choose(theme: Theme): void {
  document.documentElement.dataset.theme = theme;
  // biome-ignore lint/suspicious/noDocumentCookie: the Cookie Store API needs a secure context
  document.cookie = `${THEME_COOKIE}=${theme}; path=/; max-age=${YEAR_S}; samesite=lax`;
}
