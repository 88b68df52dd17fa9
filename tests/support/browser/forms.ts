import { expect, type Page } from '@playwright/test';

/** Presses the button that saves, and waits until the app says that it did. */
export async function save(page: Page): Promise<void> {
  await pressSave(page);
  await expectSaved(page);
}

export async function pressSave(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Save', exact: true }).click();
}

/** The app says so and shows the car. */
export async function expectSaved(page: Page): Promise<void> {
  await page.waitForURL(/\/car\/[\da-f-]{36}$/);
  await expect(page.getByText('Saved.', { exact: true })).toBeVisible();
}

/** Opens a folded part of a form. */
export async function unfold(page: Page, title: string): Promise<void> {
  await page.locator('summary').filter({ hasText: title }).click();
}

/** Opens the cautions where they are folded, as on a phone. */
export async function openCautions(page: Page): Promise<void> {
  const cautions = page.locator('details').filter({ hasText: 'With care' });
  await expect(cautions).toBeVisible();
  if ((await cautions.getAttribute('open')) === null) await cautions.locator('summary').click();
}
