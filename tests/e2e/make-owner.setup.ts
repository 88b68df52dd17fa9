import { expect, test as setup } from '@playwright/test';

setup('the setup token makes the owner and the first garage', async ({ page }) => {
  await page.goto(`/start?token=${process.env.QUARTERMARK_TOKEN}`);
  await page.getByLabel('Your name').fill('Ada Quill');
  await page.getByLabel('E-mail address').fill('ada@garage.example');
  await page.getByLabel('Password', { exact: true }).fill('a long enough password');
  await page.getByLabel('Name of the garage').fill('The Low Barn');
  await page.getByLabel('Time zone of the garage').fill('Europe/London');
  await page
    .getByRole('button', { name: /make|create|open/i })
    .last()
    .click();
  await page.waitForURL(/\/g\/[\da-f-]{36}/);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await page.context().storageState({ path: 'test-results/owner.json' });
});
