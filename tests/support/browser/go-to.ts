import type { Page } from '@playwright/test';

/** Goes somewhere by the ways around at the head of a page; on a phone some of them lie behind "More". */
export async function goTo(page: Page, words: string): Promise<void> {
  const ways = page.getByRole('navigation', { name: 'Garage' });
  const more = ways.getByRole('button', { name: 'More' });
  const way = ways.getByRole('link', { name: words, exact: true });
  if (!(await way.isVisible())) await more.click();
  await way.click();
}
