import { expect, type Page } from '@playwright/test';
import { BRAKE_FLUID, type OwnGarage, test } from '../../support/browser/garage-test.ts';

/**
 * From the press that saves to the change on the other window: far below what fetching anew by itself would
 * take. How fast it is, is for the bench to say; here the time is only noted.
 */
const WITHIN_MS = 10_000;

/** Opens an address in a second window of the same person, and makes sure that it keeps up by itself. */
async function secondWindow(page: Page, address: string): Promise<Page> {
  const other = await page.context().newPage();
  await other.goto(address);
  await other.evaluate('globalThis.neverReloaded = true');
  return other;
}

async function seenWithin(other: Page, what: string, seen: () => Promise<void>): Promise<void> {
  const began = performance.now();
  await seen();
  const tookMs = performance.now() - began;
  test
    .info()
    .annotations.push({ type: 'seen after', description: `${what}: ${tookMs.toFixed()} ms` });
  expect(tookMs, what).toBeLessThan(WITHIN_MS);
  expect(await other.evaluate('globalThis.neverReloaded')).toBe(true);
}

async function watched(garage: OwnGarage): Promise<void> {
  await garage.watch({ ...BRAKE_FLUID, limits: [{ measure: 'sessions', value: 18 }] });
  await garage.counted();
}

test('an entry written elsewhere changes an open garage and an open car at once, without a reload', async ({
  page,
  garage,
}) => {
  await watched(garage);
  await page.goto(garage.home());
  const car = await secondWindow(page, garage.car());
  await page.evaluate('globalThis.neverReloaded = true');
  const garageRow = page.getByRole('listitem').filter({ hasText: garage.name });
  await expect(garageRow).toContainText('18 sessions left');
  await expect(car.getByRole('region', { name: 'Items' })).toContainText('18 sessions left');
  await garage.write({ kind: 'session', use: 'circuit', sessions: 5, on: '2026-06-14' });
  await seenWithin(page, 'the garage', () => expect(garageRow).toContainText('13 sessions left'));
  await seenWithin(car, 'the car', () =>
    expect(car.getByRole('region', { name: 'Items' })).toContainText('13 sessions left'),
  );
  await expect(car.getByRole('region', { name: 'History' })).toContainText('5 sessions');
});

test('an oil check and a session recorded in one window change the other at once, without a reload', async ({
  page,
  garage,
}) => {
  await watched(garage);
  const garageWindow = await secondWindow(page, garage.home());
  const carWindow = await secondWindow(page, garage.car());
  const row = garageWindow.getByRole('listitem').filter({ hasText: garage.name });
  const readings = carWindow.getByRole('region', { name: 'Readings' });
  const items = carWindow.getByRole('region', { name: 'Items' });

  await page.goto(garage.record('oilCheck'));
  await page.getByRole('button', { name: 'A quarter', exact: true }).click();
  await seenWithin(carWindow, 'the stick on the car', () =>
    expect(readings).toContainText('a quarter'),
  );
  await seenWithin(garageWindow, 'the stick in the garage', () =>
    expect(row).toContainText('a quarter'),
  );

  await page.goto(garage.record('session'));
  await page.getByRole('textbox', { name: 'Sessions' }).fill('4');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await seenWithin(carWindow, 'the fluid on the car', () =>
    expect(items).toContainText('14 sessions left'),
  );
  await seenWithin(garageWindow, 'the fluid in the garage', () =>
    expect(row).toContainText('14 sessions left'),
  );
});
