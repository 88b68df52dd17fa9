'use client';

import { useEffect, useState } from 'react';
import type { DuePartQuery } from './use-due-part.ts';

/** Of each part so many pages are fetched for paper: 1,000 lines. */
const PAGES_MAX = 20;

/** Prints the page once every line of it is here, not only those that were looked at. */
export function usePrintAll(queries: readonly DuePartQuery[]) {
  const [busy, setBusy] = useState(false);
  const [times, setTimes] = useState(0);
  const [cut, setCut] = useState<string | null>(null);

  // the lines that came last are on the page only now
  useEffect(() => {
    if (times > 0) window.print();
  }, [times]);

  async function print() {
    setBusy(true);
    const ends = await Promise.all(queries.map(toTheEnd));
    setBusy(false);
    setCut(
      ends.every((end) => end)
        ? null
        : 'Not every line could be put on the page. Choose one car, or a day, and print again.',
    );
    setTimes((before) => before + 1);
  }
  return { print, busy, cut };
}

/** @returns false if lines are missing */
async function toTheEnd(query: DuePartQuery): Promise<boolean> {
  let { hasNextPage, isError, data } = query;
  while (hasNextPage && !isError && (data?.pages.length ?? 0) < PAGES_MAX)
    ({ hasNextPage, isError, data } = await query.fetchNextPage());
  return !hasNextPage && !isError;
}
