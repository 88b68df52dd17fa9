import { expect } from '@playwright/test';
import { TODAY, test } from '../../support/browser/garage-test.ts';
import { openPocket, target } from '../../support/browser/pocket.ts';

const FULL = `
  const full = () => { throw new DOMException('full', 'QuotaExceededError'); };
  IDBObjectStore.prototype.put = full;
  IDBObjectStore.prototype.add = full;
`;

test('a full phone saves with signal, and without it calls nothing saved and keeps what was typed', async ({
  page,
  context,
  garage,
}) => {
  await page.addInitScript(FULL);
  await openPocket(page, garage);
  await target(page, 'Fuel').click();
  const amount = page.getByRole('textbox', { name: 'Fuel' });
  await amount.fill('37.5');
  await amount.blur();
  await context.setOffline(true);
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByText(/Not saved: this phone has no room left/)).toBeVisible();
  await expect(page.getByText(/^Saved/)).toHaveCount(0);
  await expect(amount).toHaveValue('37.5');
  expect(await garage.log()).toEqual([]);

  await context.setOffline(false);
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByText('Saved.', { exact: true })).toBeVisible();
  const [fuel] = await garage.logOf(1);
  expect(fuel?.entry).toMatchObject({ volume: { text: '37.5', unit: 'l' } });
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('Undone.')).toBeVisible();
  await garage.logOf(0);
});

test('a private window that keeps nothing saves with signal, and says what it is without', async ({
  page,
  context,
  garage,
}) => {
  await page.addInitScript(`
    IDBFactory.prototype.open = () => { throw new DOMException('no', 'InvalidStateError'); };
  `);
  await openPocket(page, garage);
  await target(page, 'Oil check').click();
  await context.setOffline(true);
  await page.getByRole('button', { name: 'MAX', exact: true }).click();
  await expect(page.getByText(/Not saved: this browser keeps nothing for pages/)).toBeVisible();
  await context.setOffline(false);
  await page.getByRole('button', { name: 'MAX', exact: true }).click();
  await expect(page.getByText('Saved.', { exact: true })).toBeVisible();
  expect(await garage.logOf(1)).toHaveLength(1);
});

test('a phone whose clock is a day ahead says so, and its entries carry the garage’s day', async ({
  page,
  garage,
}) => {
  const { at } = await garage.api.query<{ at: string }>('pocket.sheet', undefined);
  const ahead = Date.parse(at) + 86_400_000 - Date.now();
  await page.addInitScript(`
    const RealDate = Date;
    const now = () => RealDate.now() + ${ahead};
    globalThis.Date = class extends RealDate {
      constructor(...given) { super(...(given.length === 0 ? [now()] : given)); }
      static now() { return now(); }
    };
  `);
  await openPocket(page, garage);
  await expect(
    page.getByText('This phone’s clock is a day ahead; entries carry the garage’s day and time.'),
  ).toBeVisible();
  await target(page, 'Oil check').click();
  await page.getByRole('button', { name: 'Half', exact: true }).click();
  await expect(page.getByText('Saved.', { exact: true })).toBeVisible();
  const [checked] = await garage.logOf(1);
  expect(checked?.entry.on).toBe(TODAY);
});

test('the label of a car opens its recording, and the sheet of labels has one for each', async ({
  page,
  garage,
}) => {
  await page.goto(`${garage.home()}/labels`);
  await expect(
    page.getByRole('img', { name: `Code that opens recording for ${garage.name}` }),
  ).toBeVisible();
  await expect(page.getByText('These labels open on this machine only.')).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('button', { name: 'Print' })).toBeHidden();
  await expect(page.getByRole('img', { name: /^Code/ })).toBeVisible();
});

test('over plain http the pocket page and the settings say that this browser cannot keep it', async ({
  page,
  garage,
}) => {
  await page.addInitScript(`Object.defineProperty(window, 'isSecureContext', { value: false })`);
  await openPocket(page, garage);
  const words = /^Offline recording needs HTTPS or this very machine/;
  await expect(page.getByText(words)).toBeVisible();
  await page.goto(`${garage.home()}/settings`);
  await expect(page.getByText(words)).toBeVisible();
});
