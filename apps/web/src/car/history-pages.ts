import type { HistoryPage } from '@quartermark/api/client';

/** How the history goes on from page to page; the server's first fetch and the screen agree on it. */
export const historyPages = {
  getNextPageParam: (page: HistoryPage) => page.next,
};
