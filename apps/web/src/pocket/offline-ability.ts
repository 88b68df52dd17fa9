/** Whether this browser can keep a page for use without signal, and if not, why. */
export type OfflineAbility = 'works' | 'plainHttp' | 'browser';

/** Asked in a browser only. */
export function offlineAbility(): OfflineAbility {
  // a page over plain http has it only on the machine that serves it
  if (!window.isSecureContext) return 'plainHttp';
  return 'serviceWorker' in navigator ? 'works' : 'browser';
}

export const OFFLINE_WORDS: Readonly<Record<OfflineAbility, string>> = {
  works:
    'This browser keeps the pocket page: open it once with signal, and it records without. What is recorded waits here and is sent once there is signal.',
  plainHttp:
    'Offline recording needs HTTPS or this very machine; here entries are sent only with signal. Whoever runs Quartermark can start it with TLS_CERT and TLS_KEY, the paths of a certificate and its key; this phone must trust that certificate.',
  browser:
    'This browser keeps no pages for use without signal, or is a private window; here entries are sent only with signal.',
};
