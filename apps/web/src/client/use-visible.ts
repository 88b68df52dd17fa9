'use client';

import { useSyncExternalStore } from 'react';

function watch(onChange: () => void): () => void {
  document.addEventListener('visibilitychange', onChange);
  return () => document.removeEventListener('visibilitychange', onChange);
}

/** Whether this tab is in sight. */
export function useVisible(): boolean {
  return useSyncExternalStore(
    watch,
    () => document.visibilityState === 'visible',
    // a page is asked for by someone who looks
    () => true,
  );
}
