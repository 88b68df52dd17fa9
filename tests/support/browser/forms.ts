import { expect, type Page } from '@playwright/test';

/** Presses the button that saves, and waits until the app says that it did. */
export async function save(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Save/ }).click();
  await expectSaved(page);
}

export async function expectSaved(page: Page): Promise<void> {
  await expect(page.getByText('Saved.', { exact: true })).toBeVisible();
}
