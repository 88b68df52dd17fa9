'use client';

import { useState } from 'react';
import { holdOrder } from './hold-order.ts';

/** Rows in the order they were first shown, and the way to sort them anew. See `holdOrder()`. */
export function useHeldOrder<R>(proper: readonly R[], idOf: (row: R) => string) {
  const [held, setHeld] = useState<readonly string[]>(() => proper.map(idOf));
  const { rows, moved } = holdOrder(held, proper, idOf);
  const unseen = proper.filter((row) => !held.includes(idOf(row)));
  // rows that came with a further page, or are new, keep their place from now on
  if (unseen.length > 0) setHeld([...held, ...unseen.map(idOf)]);
  return { rows, moved, sortAgain: () => setHeld(proper.map(idOf)) };
}
