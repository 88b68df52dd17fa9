import { expect, type Page } from '@playwright/test';
import type { GarageView } from '@quartermark/api/client';
import { eventually } from '../eventually.ts';
import { apiOf } from './api-of.ts';

/** The address of the demo garage that this browser is signed in to, once all of its cars are computed. */
export async function demoGarageOf(page: Page, origin: string): Promise<string> {
  const api = apiOf(page.request, origin);
  const garages = await api.query<GarageView[]>('garage.mine', undefined);
  const demo = garages.find((one) => one.demo);
  if (!demo) throw new Error('this browser is not signed in to the demo garage');
  await eventually('the demo garage to be computed', async () => {
    const { rows } = await api.query<{ rows: { version: number; wantedVersion: number }[] }>(
      'garage.overview',
      { garageId: demo.id },
    );
    return rows.length > 0 && rows.every((row) => row.version === row.wantedVersion);
  });
  return `/g/${demo.id}`;
}

/** So often the worker looks whether letters are to be written. */
const TICK_MS = 5 * 60_000;

/** The address of the demo's newest letter, once there is one. */
export async function demoLetter(page: Page, garage: string): Promise<string> {
  const newest = page
    .getByRole('region', { name: 'Letters so far' })
    .getByRole('heading', { level: 3 })
    .getByRole('link')
    .first();
  await expect(async () => {
    await page.goto(`${garage}/letters`);
    await expect(newest).toBeVisible({ timeout: 1000 });
  }).toPass({ intervals: [5000], timeout: TICK_MS + 30_000 });
  return (await newest.getAttribute('href')) ?? '';
}

/** Ids of the demo's records are the same on each day; see `record-id.ts` of the seed. */
const id = (car: number, variant: string, number: number) =>
  `01900000-0000-700${car}-${variant}-${String(number).padStart(12, '0')}`;
export const demoCar = (car: number) => `car/${id(car, 'a000', 0)}`;
export const demoRecord = (car: number, kind = '') => `record/${id(car, 'a000', 0)}${kind}`;
export const demoItem = (car: number, number: number) =>
  `${demoCar(car)}/item/${id(car, '9000', number)}`;
/** Items of a car, as an address names several. */
export const demoItems = (car: number, ...numbers: readonly number[]) =>
  numbers.map((number) => `item=${id(car, '9000', number)}`).join('&');
/** That an item of a car is due soon, as a letter's link names it. */
export const demoFact = (car: number, number: number) =>
  encodeURIComponent(`${id(car, 'a000', 0)}/dueSoon/${id(car, '9000', number)}:never`);
export const demoEntry = (car: number, number: number) => `entry/${id(car, '8000', number)}`;
/** A set, a tool or a person. */
export const demoGear = (number: number) =>
  `gear/01900000-0000-7fa0-a000-${String(number).padStart(12, '0')}`;
export const demoEvent = (number: number) =>
  `01900000-0000-7fa1-a000-${String(number).padStart(12, '0')}`;
export const demoLayUp = (number: number) =>
  `01900000-0000-7fa2-a000-${String(number).padStart(12, '0')}`;
