import type { OverviewPage } from '@quartermark/api/client';

/** How the overview goes on from page to page; the server's first fetch and the screen agree on it. */
export const overviewPages = {
  getNextPageParam: (page: OverviewPage) => page.next,
};
