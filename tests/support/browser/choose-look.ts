import type { Page } from '@playwright/test';

export const LOOKS = ['paper', 'graphite', 'sun'] as const;
export type Look = (typeof LOOKS)[number];

/** Chooses a look at the head of the page, as a person does. */
export async function chooseLook(page: Page, look: Look): Promise<void> {
  await page.getByLabel('Look').first().selectOption(look);
}
