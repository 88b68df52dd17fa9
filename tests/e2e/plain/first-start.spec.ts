import { expect, test } from '@playwright/test';

test('a plain build serves its first page with the token it printed, on the real day', async ({
  page,
}) => {
  await page.goto(`/start?token=${process.env.QUARTERMARK_PLAIN_TOKEN}`);
  await expect(page.getByRole('button', { name: 'Open the demo garage' })).toBeEnabled();
  await page.getByRole('button', { name: 'Open the demo garage' }).click();
  await page.waitForURL(/\/g\/[\da-f-]{36}/);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
});
