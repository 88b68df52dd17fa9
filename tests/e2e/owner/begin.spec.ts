import { expect, type Page } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import type { OwnGarage } from '../../support/browser/garage-test.ts';
import { test } from '../../support/browser/garage-test.ts';
import { Taps } from '../../support/browser/taps.ts';

const row = (page: Page, name: string) =>
  page.getByRole('listitem').filter({ has: page.getByRole('heading', { name, exact: true }) });
const answer = (page: Page, name: string, words: string | RegExp) =>
  row(page, name).getByRole('radio', { name: words });
const names = async (garage: OwnGarage) =>
  (await garage.view()).items.map(({ item }) => item.name).sort();

const TEN = [
  'Engine oil',
  'Oil filter',
  'Gearbox oil',
  'Differential oil',
  'Brake fluid',
  'Brake pads, look and measure',
  'Brake discs, look and measure',
  'Tyres, tread and cracks',
  'Wheel fasteners, torque',
  'Clutch fluid',
];

test('a used car without papers gets ten items in at most 25 taps', async ({ page, garage }) => {
  const taps = new Taps();
  await page.goto(garage.car());
  await taps.on(page.getByRole('link', { name: 'Go through the usual list' }));
  await taps.on(page.getByRole('radio', { name: 'Dry sump' }));
  await taps.on(page.getByRole('radio', { name: 'Turbo or supercharger' }));
  await taps.on(page.getByRole('radio', { name: 'Manual' }));
  await taps.on(page.getByRole('button', { name: 'Road', exact: true }));
  await taps.on(page.getByRole('button', { name: 'Circuits' }));
  // one set of answers for most, and one that is to be done before anything else
  for (const name of TEN.slice(0, 9)) await taps.on(answer(page, name, /Seen good today/));
  await taps.on(answer(page, 'Clutch fluid', 'Treat as due now'));
  await expect(page.getByText(/^10 items will be added\./)).toBeVisible();
  await taps.on(page.getByRole('button', { name: 'Save 10 items' }));
  await page.waitForURL(/\/car\/[\da-f-]{36}$/);
  await expect(page.getByText(/^10 items added\. \d+ left open were not added\.$/)).toBeVisible();
  expect(taps.count).toBeLessThanOrEqual(25);

  expect(await names(garage)).toEqual([...TEN].sort());
  const { car, items } = await garage.counted();
  expect(car.profile).toMatchObject({ sump: 'dry', induction: 'forced', oilSpanL: 1.2 });
  const byName = new Map(items.map(({ item }) => [item.name, item]));
  expect(byName.get('Engine oil')).toMatchObject({
    role: 'engineOil',
    source: 'common practice, no source',
    baseline: { on: '2026-06-15', historyComplete: true },
  });
  expect(byName.get('Clutch fluid')).toMatchObject({ dueSince: '2026-06-15' });
  expect(byName.get('Clutch fluid')?.baseline).toBeUndefined();
});

test('what was seen good today is counted from today, with the odometer of today', async ({
  page,
  garage,
}) => {
  await garage.write({ kind: 'odometer', odometer: { text: '41,000', unit: 'km' } });
  await garage.counted();
  await page.goto(`${garage.car()}/begin`);
  await expect(page.getByLabel('The odometer today')).toHaveValue('41,000');
  await answer(page, 'Engine oil', /Seen good today/).click();
  await page.getByRole('button', { name: 'Save 1 item' }).click();
  await page.waitForURL(/\/car\/[\da-f-]{36}$/);
  expect((await garage.view()).items[0]?.item.baseline).toEqual({
    on: '2026-06-15',
    odometer: { text: '41,000', unit: 'km' },
    historyComplete: true,
  });
  await garage.counted();
  // nothing was driven since, so that the months come before the 12,000 km
  const items = page.getByRole('region', { name: 'Items' });
  await expect(items).toContainText('12 months are up on 15 June 2027');
  await items.getByRole('button', { name: 'Why: Engine oil' }).click();
  await expect(items).toContainText('0 km counted since 15 June 2026. The limit is 12,000 km.');
});

test('an answer that lacks its day or its value says so beside it, and a reload keeps the answers', async ({
  page,
  garage,
}) => {
  await page.goto(`${garage.car()}/begin`);
  await answer(page, 'Engine oil', /Done on/).click();
  await answer(page, 'Air filter', /Seen good today/).click();
  await answer(page, 'Oil filter', 'Not on this car').click();
  await page.getByRole('button', { name: 'Save 2 items' }).click();
  await expect(row(page, 'Engine oil').getByLabel('Done on')).toHaveAccessibleDescription(
    /Give the day/,
  );
  await expect(row(page, 'Air filter').getByLabel('The manual says')).toHaveAccessibleDescription(
    /leave it open/,
  );
  await expect(page.getByText(/look again at: Engine oil, Air filter/)).toBeVisible();
  await expectAccessible(page, 'the interview with errors');
  expect((await garage.view()).items).toEqual([]);

  await page.reload();
  await row(page, 'Engine oil').getByLabel('Done on').fill('2026-03-01');
  await row(page, 'Engine oil').getByLabel('The odometer then').fill('38 000');
  await row(page, 'Air filter').getByRole('button', { name: 'Leave open' }).click();
  await page.getByRole('button', { name: 'Save 1 item' }).click();
  await page.waitForURL(/\/car\/[\da-f-]{36}$/);
  expect((await garage.view()).items.map(({ item }) => item)).toMatchObject([
    { name: 'Engine oil', baseline: { on: '2026-03-01', odometer: { text: '38 000' } } },
  ]);
  // what is on the list is not proposed again
  await page.goto(`${garage.car()}/begin`);
  await expect(row(page, 'Oil filter')).toBeVisible();
  await expect(row(page, 'Engine oil')).toHaveCount(0);
});
