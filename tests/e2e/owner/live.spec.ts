import { expect, type Page } from '@playwright/test';
import { BRAKE_FLUID, type OwnGarage, test } from '../../support/browser/garage-test.ts';

/** From the press that saves to the change on the other window; a bound of function, not of speed. */
const WITHIN_MS = 2_000;

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
  expect(tookMs, what).toBeLessThan(WITHIN_MS);
  expect(await other.evaluate('globalThis.neverReloaded')).toBe(true);
}

async function watched(garage: OwnGarage): Promise<void> {
  await garage.watch({ ...BRAKE_FLUID, limits: [{ measure: 'sessions', value: 18 }] });
  await garage.counted();
}

test('an entry written elsewhere changes an open garage and an open car within 2 s, without a reload', async ({
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
