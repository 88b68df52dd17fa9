import { expect, type Page } from '@playwright/test';
import { test } from '../../support/browser/garage-test.ts';

const MOST_PRESSES = 60;

/** Goes on with the tab key until something of that name has the focus, which must be seen. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let press = 0; press < MOST_PRESSES; press += 1) {
    await page.keyboard.press('Tab');
    const focused = page.locator('*:focus');
    const words = (await focused.getAttribute('aria-label')) ?? (await focused.textContent()) ?? '';
    if (!name.test(words.trim())) continue;
    const outline = await page.evaluate<string>(
      'getComputedStyle(document.activeElement).outlineStyle',
    );
    expect(outline, `the focus on ${words}`).not.toBe('none');
    return;
  }
  throw new Error(`${MOST_PRESSES} presses of Tab did not lead to ${name}`);
}

test('an oil check is recorded and undone without a mouse', async ({ page, garage }) => {
  await garage.counted();
  await page.goto(garage.home());
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Skip to the content' })).toBeFocused();
  await page.keyboard.press('Enter');
  await tabTo(page, /^What happened$/);
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/record\//);
  await tabTo(page, /^Oil check/);
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/oilCheck$/);
  await tabTo(page, /^Three quarters$/);
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/car\/[\da-f-]{36}$/);
  const [checked] = await garage.logOf(1);
  expect(checked?.entry).toMatchObject({ kind: 'oilCheck', level: { fraction: 0.75 } });
  await expect(page.getByText('Saved.', { exact: true })).toBeVisible();
  // F6 leads to what the app says (Base UI names the key on the region itself)
  await page.keyboard.press('F6');
  await tabTo(page, /^Undo$/);
  await page.keyboard.press('Enter');
  await expect(page.getByText('Undone.')).toBeVisible();
  expect(await garage.log()).toEqual([]);
});
