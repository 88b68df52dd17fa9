'use client';

import { useCallback, useState } from 'react';
import { newId } from './make-id.ts';

/**
 * Ids by name, each made once: what is sent again after no answer means the same things.
 *
 * @example
 * const idOf = useIds();
 * const items = chosen.map(({ key, item }) => ({ itemId: idOf(key), item }));
 */
export function useIds(): (name: string) => string {
  const [ids] = useState(() => new Map<string, string>());
  return useCallback(
    (name) => {
      const id = ids.get(name) ?? newId();
      ids.set(name, id);
      return id;
    },
    [ids],
  );
}
