'use client';

import { useSyncExternalStore } from 'react';
import { OFFLINE_WORDS, offlineAbility } from './offline-ability.ts';

const never = () => () => {};

/** Whether this browser records without signal, and what it takes where it does not. */
export function PocketSettings() {
  const ability = useSyncExternalStore(never, offlineAbility, () => 'works' as const);
  return (
    <div>
      <h3>Without signal</h3>
      <p>{OFFLINE_WORDS[ability]}</p>
      <p>
        <a href="/pocket">Open the pocket page</a>
      </p>
    </div>
  );
}
