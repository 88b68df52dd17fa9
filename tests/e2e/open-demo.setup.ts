import { writeFileSync } from 'node:fs';
import { expect, test as setup } from '@playwright/test';

setup('the setup token opens the demo garage', async ({ page }) => {
  await page.goto(`/start?token=${process.env.QUARTERMARK_TOKEN}`);
  await page.getByRole('button', { name: 'Open the demo garage' }).click();
  await page.waitForURL(/\/g\/[\da-f-]{36}/);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  const url = new URL(page.url()).pathname;
  writeFileSync('test-results/demo-garage.json', JSON.stringify({ url }));
  await page.context().storageState({ path: 'test-results/demo.json' });
});
