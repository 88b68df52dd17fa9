import { expect } from '@playwright/test';
import type { Written } from '@quartermark/api/client';
import { save } from '../../support/browser/forms.ts';
import { ENGINE_OIL, test } from '../../support/browser/garage-test.ts';
import { Taps } from '../../support/browser/taps.ts';

/** From the open garage to the mended figures. */
const WITHIN_MS = 60_000;
const MOST_TAPS = 5;

test('an odometer mistyped last week is found, mended and followed by every figure, within a minute', async ({
  page,
  garage,
}) => {
  await garage.watch(ENGINE_OIL);
  await garage.write({
    kind: 'odometer',
    odometer: { text: '42000', unit: 'km' },
    on: '2026-05-20',
  });
  // 43,500 was meant; a thousand too many is below what a day of driving can be, so nothing looks odd
  const { id } = await garage.write({
    kind: 'odometer',
    odometer: { text: '44500', unit: 'km' },
    on: '2026-06-08',
  });
  await garage.counted();
  await page.goto(garage.home());
  const row = page.getByRole('listitem').filter({
    has: page.getByRole('heading', { level: 2, name: garage.name }),
  });
  // 10,000 km from 41,000 on
  await expect(row).toContainText('6,500 km left');
  const other = await page.context().newPage();
  await other.goto(garage.home());
  const began = performance.now();

  const taps = new Taps();
  await taps.on(row.getByRole('link', { name: garage.name }));
  const history = page.getByRole('region', { name: 'History' });
  await history.getByLabel('Words in it').fill('44500');
  await expect(history.getByRole('listitem')).toHaveCount(1);
  await taps.on(history.getByRole('link', { name: 'Odometer' }));
  await page.waitForURL(new RegExp(`/entry/${id}$`));
  await taps.on(page.getByRole('link', { name: 'Amend' }));
  await page.getByRole('textbox', { name: /^Odometer/ }).fill('43500');
  await save(page);
  taps.count += 1;
  await expect(page.getByRole('region', { name: 'Items' })).toContainText('7,500 km left');
  await expect(page.getByRole('region', { name: 'Readings' })).toContainText('43,500 km');
  // the garage in another window follows without a reload
  await expect(other.getByText(/7,500 km left/)).toBeVisible();
  expect(performance.now() - began).toBeLessThan(WITHIN_MS);
  expect(taps.count).toBeLessThanOrEqual(MOST_TAPS);
});

test('a reading that cannot be is offered for mending on the car’s page', async ({
  page,
  garage,
}) => {
  await garage.watch(ENGINE_OIL);
  const read = (text: string, on: string) => {
    const entry = garage.entry({ kind: 'odometer', odometer: { text, unit: 'km' }, on });
    // asked once, and answered that it is right
    const command = garage.command({ entry, confirmed: ['odometerBackwards'] });
    return garage.api.mutate<Written>('entry.record', command);
  };
  await read('42000', '2026-05-20');
  const { id } = await read('99999', '2026-06-08');
  await read('43600', '2026-06-12');
  await garage.counted();
  await page.goto(garage.car());
  const mend = page.getByRole('region', { name: 'Entries to mend' });
  await expect(mend).toContainText('99999 km');
  await mend.getByRole('link', { name: 'Open the entry' }).click();
  await page.waitForURL(new RegExp(`/entry/${id}$`));
  await page.getByRole('link', { name: 'Amend' }).click();
  await page.getByRole('textbox', { name: /^Odometer/ }).fill('43400');
  await save(page);
  await expect(mend).toHaveCount(0);
});
