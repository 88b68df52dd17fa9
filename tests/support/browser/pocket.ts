import { type BrowserContext, expect, type Page } from '@playwright/test';
import { eventually } from '../eventually.ts';
import type { OwnGarage } from './garage-test.ts';

export const TARGETS = [
  'Oil check',
  'Oil added',
  'Session done',
  'Wheels',
  'Fuel',
  'Finding',
  'Odometer',
  'More',
] as const;

export const target = (page: Page, name: (typeof TARGETS)[number]) =>
  page.getByRole('button', { name, exact: true });

/** Opens the pocket page for the garage's car, as its label would, and waits until it can be pressed. */
export async function openPocket(page: Page, garage: OwnGarage): Promise<void> {
  await page.goto(`/pocket?g=${garage.garageId}&car=${garage.carId}`);
  await expect(page.getByRole('heading', { level: 1, name: garage.name })).toBeVisible();
}

/** Run in the page, which has what this file has not. */
const KEPT = `(async () => {
  const registration = await navigator.serviceWorker.getRegistration();
  return Boolean(registration?.active && (await caches.match('/pocket')));
})()`;

/** Opens it once with signal and waits until this browser keeps the page and what it shows. */
export async function keepForLater(page: Page, garage: OwnGarage): Promise<void> {
  await openPocket(page, garage);
  await eventually('the page to be kept', () => page.evaluate<boolean>(KEPT));
}

/** The tab is killed, and the page opened anew, as from the home screen. */
export async function reopen(context: BrowserContext, page: Page): Promise<Page> {
  await page.close();
  const next = await context.newPage();
  await next.goto('/pocket');
  return next;
}

/** Nothing waits in this browser any more. */
export async function expectAllSent(page: Page): Promise<void> {
  await expect(page.getByRole('link', { name: /(waits?|needs?) (for|your)/ })).toHaveCount(0, {
    timeout: 20_000,
  });
}
