import { expect } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { unfold } from '../../support/browser/forms.ts';
import {
  BRAKE_FLUID,
  ENGINE_OIL,
  type OwnGarage,
  test,
} from '../../support/browser/garage-test.ts';

const limits = (garage: OwnGarage) => garage.view().then(({ items }) => items[0]?.item.limits);

test('an item is added with its limits and the day it was last done, and is counted at once', async ({
  page,
  garage,
}) => {
  await garage.write({ kind: 'session', use: 'circuit', sessions: 4, on: '2026-06-06' });
  await garage.counted();
  await page.goto(garage.car());
  await page.getByRole('link', { name: 'Add an item' }).first().click();
  await page.getByLabel('Name').fill('Brake fluid');
  await page.getByLabel('Counted in').selectOption({ label: 'Sessions' });
  await page.getByRole('textbox', { name: 'At most' }).fill('18');
  await page.getByRole('button', { name: 'Add another limit' }).click();
  await page.getByLabel('Counted in').last().selectOption({ label: 'Months' });
  await page.getByRole('textbox', { name: 'At most' }).last().fill('12');
  await page.getByRole('radio', { name: 'Done on a day I know' }).click();
  await page.getByLabel('Done on', { exact: true }).fill('2026-05-01');
  await page.getByRole('checkbox', { name: /All use since then/ }).click();
  await expectAccessible(page, 'add an item, filled in');
  await page.getByRole('button', { name: 'Save the item' }).click();
  await page.waitForURL(/\/car\/[\da-f-]{36}$/);
  const items = page.getByRole('region', { name: 'Items' });
  // 18 - 4 = 14
  await expect(items).toContainText('14 sessions left');
  await items.getByRole('button', { name: 'Why: Brake fluid' }).click();
  // 1 May 2026 plus 12 months
  await expect(items).toContainText('good through 1 May 2027');
});

test('an item that lacks its name and its limit says so beside both, and keeps the rest over a reload', async ({
  page,
  garage,
}) => {
  await page.goto(`${garage.car()}/item/add`);
  await page.getByLabel('Whose values these are').fill('the manual, page 7');
  await page.getByRole('textbox', { name: 'At most' }).fill('many');
  await page.getByRole('button', { name: 'Save the item' }).click();
  await expect(page.getByLabel('Name')).toHaveAccessibleDescription(/fill/i);
  await expect(page.getByRole('textbox', { name: 'At most' })).toHaveAccessibleDescription(
    /many.*not a number/,
  );
  await expectAccessible(page, 'add an item with errors');
  await page.reload();
  await expect(page.getByLabel('Whose values these are')).toHaveValue('the manual, page 7');
  await expect(page.getByRole('textbox', { name: 'At most' })).toHaveValue('many');
  expect((await garage.view()).items).toEqual([]);
});

test('limits are changed, the figures follow, and the change can be undone', async ({
  page,
  garage,
}) => {
  await garage.watch({ ...BRAKE_FLUID, limits: [{ measure: 'sessions', value: 18 }] });
  await garage.counted();
  await page.goto(garage.car());
  await page.getByRole('link', { name: /^Change ?: Brake fluid$/ }).click();
  await page.getByRole('textbox', { name: 'At most' }).fill('5');
  await page.getByRole('button', { name: 'Save the item' }).click();
  await page.waitForURL(/\/car\/[\da-f-]{36}$/);
  const items = page.getByRole('region', { name: 'Items' });
  await expect(items).toContainText('5 sessions left');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(items).toContainText('18 sessions left');
  expect(await limits(garage)).toEqual([{ measure: 'sessions', value: 18 }]);
});

test('two people change one item: the second sees both versions, and decides', async ({
  page,
  garage,
}) => {
  const itemId = await garage.watch({
    ...BRAKE_FLUID,
    limits: [{ measure: 'sessions', value: 18 }],
  });
  await garage.counted();
  const other = await page.context().newPage();
  for (const each of [page, other]) {
    await each.goto(`${garage.car()}/item/${itemId}`);
    await expect(each.getByRole('textbox', { name: 'At most' })).toHaveValue('18');
  }
  await other.getByRole('textbox', { name: 'At most' }).fill('12');
  await other.getByRole('button', { name: 'Save the item' }).click();
  await other.waitForURL(/\/car\/[\da-f-]{36}$/);

  await page.getByRole('textbox', { name: 'At most' }).fill('10');
  await page.getByRole('button', { name: 'Save the item' }).click();
  await expect(page.getByText(/^Not saved: somebody saved another version/)).toBeVisible();
  const both = page.getByRole('table');
  await expect(both).toContainText('10 sessions');
  await expect(both).toContainText('12 sessions');
  await expect(page.getByRole('columnheader', { name: /Newest, by Ada Quill/ })).toBeVisible();
  await expectAccessible(page, 'both versions of an item');
  expect(await limits(garage)).toEqual([{ measure: 'sessions', value: 12 }]);
  await page.getByRole('button', { name: 'Save mine over it' }).click();
  await page.waitForURL(/\/car\/[\da-f-]{36}$/);
  expect(await limits(garage)).toEqual([{ measure: 'sessions', value: 10 }]);
});

test('an item that is removed can be added again', async ({ page, garage }) => {
  const itemId = await garage.watch(ENGINE_OIL);
  await garage.counted();
  await page.goto(`${garage.car()}/item/${itemId}`);
  await page.getByRole('button', { name: /remove|stop watching/i }).click();
  await expect(page.getByText('Engine oil is no longer watched.')).toBeVisible();
  expect((await garage.view()).items).toEqual([]);
  await page.getByRole('button', { name: 'Add it again' }).click();
  await expect(page.getByText('Added again as a new item.')).toBeVisible();
  expect((await garage.view()).items[0]?.item).toMatchObject({
    name: 'Engine oil',
    role: 'engineOil',
    limits: ENGINE_OIL.limits,
  });
});

test('a car changes its name and what its odometer counts in', async ({ page, garage }) => {
  await garage.write({ kind: 'odometer', odometer: { text: '41000', unit: 'km' } });
  await garage.counted();
  await page.goto(garage.car());
  await page.getByRole('link', { name: 'Change the car' }).click();
  await page.getByLabel('Name').fill('Tarnfell Corvo II');
  await page.getByRole('radio', { name: 'miles' }).click();
  await page.getByRole('button', { name: /^Save/ }).click();
  await page.waitForURL(/\/car\/[\da-f-]{36}$/);
  // 41,000 km / 1.609344 = 25,476.2 mi (NIST Handbook 44, appendix C)
  await expect(page.getByRole('region', { name: 'Readings' })).toContainText('25,476 mi');
  await expect(page).toHaveTitle(/Tarnfell Corvo II/);
  // what was typed stays as it was typed
  await expect(page.getByRole('region', { name: 'History' })).toContainText('41000 km');
});

test('an item is treated as due now, is due at once after an over-rev, and says whose value it is', async ({
  page,
  garage,
}) => {
  await garage.watch(BRAKE_FLUID);
  await garage.counted();
  await page.goto(garage.car());
  await page.getByRole('link', { name: /^Change ?: Brake fluid$/ }).click();
  await page.getByRole('checkbox', { name: /^Treat as due now/ }).click();
  await expect(page.getByLabel('Due since')).toHaveValue('2026-06-15');
  await page.getByRole('button', { name: 'The maker’s manual' }).click();
  await expect(page.getByLabel('Whose values these are')).toHaveValue('The maker’s manual');
  await unfold(page, 'Due at once');
  await page.getByRole('checkbox', { name: 'Over-rev' }).click();
  await page.getByLabel('Oil hotter than').fill('140');
  await expectAccessible(page, 'an item due at once');
  await page.getByRole('button', { name: 'Save the item' }).click();
  await page.waitForURL(/\/car\/[\da-f-]{36}$/);
  expect((await garage.view()).items[0]?.item).toMatchObject({
    dueSince: '2026-06-15',
    source: 'The maker’s manual',
    triggers: { incidents: ['overRev'], oilHotterThanC: 140 },
    baseline: { on: '2026-05-01' },
  });
  const { analysis } = await garage.counted();
  expect(analysis?.items[0]).toMatchObject({ state: 'overdue', reasonCode: 'asked' });
});
