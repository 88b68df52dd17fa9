'use client';

import { useEffect } from 'react';
import { offlineAbility } from './offline-ability.ts';

/** Has the browser keep the pocket page, where it may; shows nothing. */
export function ServiceWorker() {
  useEffect(() => {
    if (offlineAbility() !== 'works') return;
    const register = () => {
      navigator.serviceWorker.register('/sw.js').catch((error: unknown) => {
        // recording goes on with signal, and the pocket page says that there is no copy
        console.warn('the page could not be kept for use without signal:', error);
      });
    };
    // what is on screen comes first
    if (document.readyState === 'complete') register();
    else window.addEventListener('load', register, { once: true });
    return () => window.removeEventListener('load', register);
  }, []);
  return null;
}
