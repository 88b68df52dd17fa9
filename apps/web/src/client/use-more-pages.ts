'use client';

import { useEffect, useState } from 'react';

type PagedQuery = {
  data: { pages: readonly unknown[] } | undefined;
  hasNextPage: boolean;
  isFetching: boolean;
  isFetchingNextPage: boolean;
  isError: boolean;
  fetchNextPage: () => Promise<unknown>;
};

/**
 * The press for a list's next page. News that arrives while a page is on its way has the list fetched
 * anew and gives that page up; it is asked for again then, so that no press is lost.
 *
 * @example const { more, busy } = useMorePages(history);
 */
export function useMorePages({
  data,
  hasNextPage,
  isFetching,
  isFetchingNextPage,
  isError,
  fetchNextPage,
}: PagedQuery): { more: () => void; busy: boolean } {
  const pages = data?.pages.length ?? 0;
  const [wanted, setWanted] = useState(0);
  if (wanted > 0 && (pages >= wanted || isError)) setWanted(0);
  const lacking = pages < wanted && hasNextPage;
  useEffect(() => {
    if (lacking && !isFetching) void fetchNextPage();
  }, [lacking, isFetching, fetchNextPage]);
  const more = () => {
    setWanted(pages + 1);
    void fetchNextPage();
  };
  return { more, busy: lacking || isFetchingNextPage };
}
