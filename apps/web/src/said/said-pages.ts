import type { SaidPage } from '@quartermark/api/client';

/** How the list goes on from page to page; the server's first fetch and the screen agree on it. */
export const saidPages = {
  getNextPageParam: (page: SaidPage) => page.next,
};
