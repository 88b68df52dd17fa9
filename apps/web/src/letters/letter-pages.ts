/** How lists of letters go on from page to page; the server's first fetch and the screen agree on it. */
export const letterPages = {
  getNextPageParam: (page: { next: string | null }) => page.next,
};
