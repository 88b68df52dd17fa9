import { expect } from '@playwright/test';
import type { SpecView } from '@quartermark/api/client';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { type OwnGarage, test } from '../../support/browser/garage-test.ts';
import { Taps } from '../../support/browser/taps.ts';

const sheetOf = ({ api, garageId, carId }: OwnGarage) =>
  api.query<SpecView>('spec.view', { garageId, carId });

const line = (what: string, value: string, group = 'torques') => ({ group, what, value });

const write = (garage: OwnGarage, baseRevision: number, ...lines: object[]) =>
  garage.api.mutate(
    'spec.change',
    garage.command({ carId: garage.carId, baseRevision, sheet: { lines } }),
  );

test('a torque is read on the car’s sheet in two taps from the garage', async ({
  page,
  garage,
}) => {
  await write(garage, 0, line('Wheel bolts, cold', '120 N·m, star order'));
  await garage.counted();
  await page.goto(garage.home());
  const taps = new Taps();
  await taps.on(page.getByRole('link', { name: garage.name }));
  await taps.on(page.getByRole('link', { name: 'Spec sheet' }));
  const torques = page.getByRole('region', { name: 'Torques' });
  await expect(torques).toContainText('120 N·m, star order');
  await expect(torques).toContainText('unverified');
  // wheels can hurt: the caution stands beside the values
  await expect(torques).toContainText('Never loosen hot fasteners.');
  await expect(page.getByText('the maker’s manual decides.').first()).toBeVisible();
  expect(taps.count).toBe(2);
});

test('a sheet is written as typed, its lines change places, and undo goes back', async ({
  page,
  garage,
}) => {
  await page.goto(`${garage.car()}/spec`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Nothing is written on its sheet yet.',
  );
  await page.getByRole('link', { name: 'Write the sheet' }).click();
  const add = page.getByRole('button', { name: 'Add a line: torques' });
  await add.click();
  const first = page.getByRole('group', { name: 'Torques, line 1' });
  await first.getByLabel('What').fill('Sump plug');
  await page.getByRole('button', { name: 'Save the sheet' }).click();
  await expect(first.getByText(/^Write the value with its unit/)).toBeVisible();
  await first.getByLabel('Value, with its unit').fill('32 N·m, new washer');
  await add.click();
  const second = page.getByRole('group', { name: 'Torques, line 2' });
  await second.getByLabel('What').fill('Wheel bolts');
  await second.getByLabel('Value, with its unit').fill('120,0 N·m');
  await second.getByLabel('Source').fill('manual, page 212');
  await page.getByRole('button', { name: 'Up: Wheel bolts' }).click();
  await expectAccessible(page, 'a spec sheet being written');
  await page.getByRole('button', { name: 'Save the sheet' }).click();

  await page.waitForURL(/\/spec$/);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    '2 values, 1 of them unverified.',
  );
  expect((await sheetOf(garage)).sheet.lines).toEqual([
    { ...line('Wheel bolts', '120,0 N·m'), source: 'manual, page 212' },
    line('Sump plug', '32 N·m, new washer'),
  ]);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Nothing is written');
});

test('two people write one sheet: the second sees both versions', async ({ page, garage }) => {
  await write(garage, 0, line('Wheel bolts', '120 N·m'));
  await page.goto(`${garage.car()}/spec/change`);
  const value = page.getByRole('group', { name: 'Torques, line 1' }).getByLabel('Value');
  // the form stands once its fields hold what was written
  await expect(value).toHaveValue('120 N·m');
  await value.fill('125 N·m');
  await write(garage, 1, line('Wheel bolts', '130 N·m'));
  await page.getByRole('button', { name: 'Save the sheet' }).click();
  await expect(page.getByText(/^Not saved: somebody saved another version/)).toBeVisible();
  const both = page.getByRole('table');
  await expect(both).toContainText('Wheel bolts: 125 N·m (unverified)');
  await expect(both).toContainText('Wheel bolts: 130 N·m (unverified)');
  await expectAccessible(page, 'both versions of a sheet');
  await page.getByRole('button', { name: 'Save mine over it' }).click();
  await page.waitForURL(/\/spec$/);
  expect(await sheetOf(garage)).toMatchObject({
    revision: 3,
    sheet: { lines: [{ value: '125 N·m' }] },
  });
});
