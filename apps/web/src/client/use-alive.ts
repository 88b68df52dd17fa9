'use client';

import { useSyncExternalStore } from 'react';

const never = () => () => {};

/**
 * Whether the page answers yet: false in the markup that the server sent, true once it has come alive. What
 * is typed before that would be lost when the form takes its fields over.
 */
export function useAlive(): boolean {
  return useSyncExternalStore(
    never,
    () => true,
    () => false,
  );
}
