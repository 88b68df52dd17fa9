import { expect, type Page } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { save } from '../../support/browser/forms.ts';
import { test } from '../../support/browser/garage-test.ts';

/** A picture as a camera would give it, wider than what is kept. */
async function picture(page: Page): Promise<{ name: string; mimeType: string; buffer: Buffer }> {
  const url = await page.evaluate<string>(`(() => {
    const canvas = document.createElement('canvas');
    canvas.width = 3000;
    canvas.height = 1500;
    canvas.getContext('2d').fillRect(0, 0, 1500, 1500);
    return canvas.toDataURL('image/png');
  })()`);
  const buffer = Buffer.from(url.split(',')[1] ?? '', 'base64');
  return { name: 'boot.png', mimeType: 'image/png', buffer };
}

async function begin(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.getByRole('textbox', { name: 'What you found' }).fill('Weeping boot');
  await page.getByRole('radio', { name: /^Watch/ }).click();
}

test('a photo is made smaller, sent, shown with its entry, and can be taken out again', async ({
  page,
  garage,
}) => {
  await begin(page, garage.record('finding'));
  await page.getByLabel(/^Add a photo/).setInputFiles(await picture(page));
  await expect(page.getByRole('img', { name: 'Number 1' })).toBeVisible();
  await expectAccessible(page, 'a form with a photo');
  await save(page);
  const [finding] = await garage.logOf(1);
  const [photo = ''] = finding?.entry.photos ?? [];
  const kept = await page.request.get(`/api/photo/${garage.garageId}/${photo}`);
  expect(kept.ok()).toBe(true);
  await page.goto(`${garage.home()}/entry/${finding?.entry.id}`);
  const shown = page.getByRole('img', { name: 'Number 1' });
  await expect(shown).toHaveJSProperty('naturalWidth', 320);
  await page.getByRole('link', { name: 'Amend' }).click();
  await page.getByRole('button', { name: 'Remove photo 1' }).click();
  await save(page);
  const [bare] = await garage.log();
  expect(bare?.entry).not.toHaveProperty('photos');
});

test('a photo without signal stays in the form, says so, and goes at another try', async ({
  page,
  garage,
}) => {
  await begin(page, garage.record('finding'));
  await page.route('**/api/photo/**', (route) => route.abort('connectionfailed'));
  await page.getByLabel(/^Add a photo/).setInputFiles(await picture(page));
  await expect(page.getByText(/did not reach the server/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Save', exact: true })).toBeDisabled();
  await page.unroute('**/api/photo/**');
  await page.getByRole('button', { name: 'Send boot.png again' }).click();
  await expect(page.getByRole('img', { name: 'Number 1' })).toBeVisible();
  await save(page);
  const [finding] = await garage.logOf(1);
  expect(finding?.entry.photos).toHaveLength(1);
});

test('a file that is no picture is refused beside the field', async ({ page, garage }) => {
  await begin(page, garage.record('finding'));
  const buffer = Buffer.from('no picture at all');
  await page
    .getByLabel(/^Add a photo/)
    .setInputFiles({ name: 'list.png', mimeType: 'image/png', buffer });
  await expect(page.getByText(/cannot read that file as a picture/)).toBeVisible();
  await page.getByRole('button', { name: 'Remove list.png' }).click();
  await save(page);
});
