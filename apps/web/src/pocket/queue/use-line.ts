'use client';

import { useSyncExternalStore } from 'react';
import { keeper, type LineState } from './keeper.ts';

const ON_THE_SERVER: LineState = { read: false, commands: [], end: null, sending: false };

/** What waits in this browser, kept up to date. */
export function useLine(): LineState {
  return useSyncExternalStore(keeper.subscribe, keeper.state, () => ON_THE_SERVER);
}
