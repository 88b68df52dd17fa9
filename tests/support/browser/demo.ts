import type { Page } from '@playwright/test';
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

/** Ids of the demo's records are the same on each day; see `record-id.ts` of the seed. */
const id = (car: number, variant: string, number: number) =>
  `01900000-0000-700${car}-${variant}-${String(number).padStart(12, '0')}`;
export const demoCar = (car: number) => `car/${id(car, 'a000', 0)}`;
export const demoRecord = (car: number, kind = '') => `record/${id(car, 'a000', 0)}${kind}`;
export const demoItem = (car: number, number: number) =>
  `${demoCar(car)}/item/${id(car, '9000', number)}`;
export const demoEntry = (car: number, number: number) => `entry/${id(car, '8000', number)}`;
/** A set, a tool or a person. */
export const demoGear = (number: number) =>
  `gear/01900000-0000-7fa0-a000-${String(number).padStart(12, '0')}`;
export const demoEvent = (number: number) =>
  `01900000-0000-7fa1-a000-${String(number).padStart(12, '0')}`;
export const demoLayUp = (number: number) =>
  `01900000-0000-7fa2-a000-${String(number).padStart(12, '0')}`;
