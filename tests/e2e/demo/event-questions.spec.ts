import { expect, test } from '@playwright/test';
import { demoGarageOf } from '../../support/browser/demo.ts';
import { Taps } from '../../support/browser/taps.ts';

const MOST_TAPS = 8;

test('who can go to the next circuit day, what must be ordered today and what to pack: at most 8 taps from the garage', async ({
  page,
  baseURL,
}) => {
  await page.goto(await demoGarageOf(page, baseURL ?? ''));
  const taps = new Taps();
  await taps.on(page.getByRole('link', { name: 'Next: Circuit day on Sat 20 June' }));
  await page.waitForURL(/\/events\/[\da-f-]{36}$/);
  const main = page.getByRole('main');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Ready for Saturday, by the log: Velmora Quist.',
  );
  await expect(main).toContainText('Can be ready by Fri 19: Tovrik Pim (Front pads of the hatch).');
  await expect(main).toContainText(
    'Not in time: Ardvane Thessel (Front brake pads; Circuit tyres, white mark).',
  );
  await expect(main).toContainText('Not on record: Ardvane Corrit (');
  await expect(main).toContainText('Order today: Front pads of the hatch for Tovrik Pim.');
  await taps.on(page.getByRole('link', { name: 'What to take along' }));
  const pack = page.getByRole('region', { name: 'What to take along' });
  await expect(pack).toBeInViewport();
  await expect(pack).toContainText(/10W-50: [\d.]+ L/);
  await expect(pack).toContainText(/fuel of 98 octane: [\d.,]+ L/);
  await expect(pack).toContainText('Common practice, no source');
  expect(taps.count).toBeLessThanOrEqual(MOST_TAPS);
});

test('a phone reaches the events by the ways at the head of the page, without "More"', async ({
  page,
  baseURL,
}) => {
  await page.goto(await demoGarageOf(page, baseURL ?? ''));
  const ways = page.getByRole('navigation', { name: 'Garage' });
  await ways.getByRole('link', { name: 'Events', exact: true }).click();
  await page.waitForURL(/\/events$/);
  await page
    .getByRole('region', { name: 'What comes' })
    .getByRole('link', { name: 'Circuit day' })
    .click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Ready for Saturday');
});
