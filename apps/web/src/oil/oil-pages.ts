import type { OilComparedPage } from '@quartermark/api/client';

/** How the comparison goes on from page to page; the server's first fetch and the screen agree on it. */
export const oilPages = {
  getNextPageParam: (page: OilComparedPage) => page.next,
};
