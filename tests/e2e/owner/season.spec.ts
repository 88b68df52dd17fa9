import { expect, type Page } from '@playwright/test';
import type { CarView } from '@quartermark/api/client';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { BRAKE_FLUID, type OwnGarage, test } from '../../support/browser/garage-test.ts';

const likely = (view: CarView) => view.analysis?.items[0]?.dueDate?.p50 ?? null;

/** Brake fluid of 9 sessions, and of so many months that they never decide. */
async function watchFluid(garage: OwnGarage, leadDays = 0): Promise<string> {
  return garage.watch({
    ...BRAKE_FLUID,
    leadDays,
    limits: [
      { measure: 'sessions', value: 9 },
      { measure: 'months', value: 36 },
    ],
  });
}

const goToEvents = (page: Page, garage: OwnGarage) => page.goto(`${garage.home()}/events`);

test('an event says what the cars do there, and the dates of the named car follow', async ({
  page,
  garage,
}) => {
  await watchFluid(garage);
  await garage.write({ kind: 'session', use: 'circuit', sessions: 4, on: '2026-05-10' });
  const before = await garage.counted();
  await goToEvents(page, garage);
  await page.getByRole('link', { name: 'Add an event' }).click();
  await page.getByLabel('Name').fill('Circuit day');
  await page.getByLabel('First day').fill('2026-07-04');
  await expect(page.getByLabel('Sessions')).toHaveValue('4');
  await page.getByLabel('Last day (optional)').fill('2026-07-05');
  await expect(page.getByLabel('Sessions')).toHaveValue('8');
  await page.getByRole('radio', { name: 'Drag strip' }).click();
  await expect(page.getByLabel('Launches')).toHaveValue('12');
  await page.getByRole('radio', { name: 'Circuit' }).click();
  await page.getByLabel('Sessions').fill('many');
  await expect(page.getByText('Name the cars, so that it counts for them.')).toBeHidden();
  await page.getByLabel('Sessions').fill('6');
  await expect(page.getByText('Name the cars, so that it counts for them.')).toBeVisible();
  await page.getByRole('checkbox', { name: garage.name }).click();
  await page.getByRole('radio', { name: 'Certain' }).click();
  await expect(
    page.getByText(
      'Counted ahead for the car that goes: 6 sessions (from that follow about 240 km and 2.4 h); certain.',
    ),
  ).toBeVisible();
  await expectAccessible(page, 'an event with what the cars do there');
  await page.getByRole('button', { name: 'Add the event' }).click();
  await page.waitForURL(/\/events$/);
  await expect(page.getByRole('region', { name: 'What comes' })).toContainText(
    'Counts ahead for each: 6 sessions, certain',
  );
  const after = await garage.counted();
  expect(after.version).toBe(before.version + 1);
  // 5 sessions are left, and 6 are certain: due on one of its two days at the latest
  expect(likely(after)?.localeCompare('2026-07-05')).toBeLessThanOrEqual(0);
  expect(likely(before)?.localeCompare('2026-07-05')).toBe(1);
});

test('a lay-up is planned on the car’s page, changed in the calendar and dropped with a way back', async ({
  page,
  garage,
}) => {
  await garage.counted();
  await page.goto(garage.car());
  await page.getByRole('link', { name: 'Plan a lay-up' }).click();
  await page.getByRole('button', { name: 'Plan the lay-up' }).click();
  await expect(page.getByText('Choose the first day of the lay-up.').first()).toBeVisible();
  await page.getByLabel('First day').fill('2026-08-01');
  await page.getByLabel('Last day (optional)').fill('2026-09-20');
  await expectAccessible(page, 'planning a lay-up');
  await page.getByRole('button', { name: 'Plan the lay-up' }).click();
  await page.waitForURL(new RegExp(`${garage.car()}$`));
  await expect(page.getByText('Planned: from 1 August to 20 September 2026.')).toBeVisible();
  await garage.counted();

  await page.goto(garage.home());
  await expect(
    page.getByText('Lay-up planned from 1 August to 20 September 2026').first(),
  ).toBeVisible();

  await goToEvents(page, garage);
  const planned = page.getByRole('region', { name: 'Planned lay-ups' });
  await expect(planned.getByRole('listitem')).toContainText('in 47 days');
  await planned.getByRole('link', { name: garage.name }).click();
  await page.getByLabel('Last day (optional)').fill('');
  await page.getByRole('button', { name: 'Save the change' }).click();
  await expect(page.getByText('Planned: from 1 August 2026, no end said.')).toBeVisible();
  await page.getByRole('link', { name: 'Change the plan' }).click();
  await page.getByRole('button', { name: 'Drop it' }).click();
  await expect(page.getByText('None on record, none planned.')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await expect(page.getByText('Planned: from 1 August 2026, no end said.')).toBeVisible();
});

test('from the calendar the car is chosen, and a plan that should have begun is asked about', async ({
  page,
  garage,
}) => {
  await goToEvents(page, garage);
  await page.getByRole('link', { name: 'Plan a lay-up' }).click();
  await page.getByRole('button', { name: 'Plan the lay-up' }).click();
  await expect(page.getByText('Choose the car.').first()).toBeVisible();
  await page.getByRole('radio', { name: garage.name }).click();
  await page.getByLabel('First day').fill('2026-06-01');
  await page.getByRole('button', { name: 'Plan the lay-up' }).click();
  await page.waitForURL(/\/events$/);
  const view = await garage.counted();
  // a plan is no record
  expect(view.analysis?.laidUp).toBeNull();
  await page.goto(garage.car());
  const asks = page.getByText('Planned to be laid up since 1 June 2026: is it?');
  await expect(asks).toBeVisible();
  await expectAccessible(page, 'a car whose lay-up should have begun');
  await garage.write({ kind: 'layUp', on: '2026-06-01' });
  await expect(asks).toBeHidden();
});

test('parts are ordered in two presses and arrive in one, which silences when to order', async ({
  page,
  garage,
}) => {
  const itemId = await watchFluid(garage, 5);
  await garage.write({ kind: 'session', use: 'circuit', sessions: 19, on: '2026-06-01' });
  await garage.counted();
  await page.goto(garage.car());
  await expect(page.getByText('Order the parts now, they take 5 days')).toBeVisible();
  await page.goto(`${garage.car()}/item/${itemId}`);
  await page
    .locator('summary')
    .filter({ hasText: /^Ordered$/ })
    .click();
  await expect(page.getByText('That is Sat 20 June.')).toBeVisible();
  await expectAccessible(page, 'an item with the form of an order');
  await page.getByRole('button', { name: 'Save the order' }).click();
  await expect(page.getByText('Ordered 15 June, expected 20 June')).toBeVisible();
  await expect(page.getByText('Order the parts now')).toBeHidden();

  await page.getByRole('button', { name: 'Arrived' }).click();
  await expect(page.getByText('Ordered 15 June, arrived 15 June, on the shelf')).toBeVisible();
  const orders = async () => (await garage.view()).orders.map(({ order }) => order);
  expect(await orders()).toEqual([
    { on: '2026-06-15', expected: '2026-06-20', arrived: '2026-06-15' },
  ]);
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await expect(page.getByText('Ordered 15 June, expected 20 June')).toBeVisible();
  expect(await orders()).toEqual([{ on: '2026-06-15', expected: '2026-06-20' }]);
  await page.goto(garage.car());
  await expect(page.getByText('Parts ordered 15 June, expected 20 June')).toBeVisible();
});

test('two people change one order: the second sees both versions', async ({ page, garage }) => {
  const itemId = await watchFluid(garage);
  const orderId = crypto.randomUUID();
  const order = { on: '2026-06-10' };
  await garage.api.mutate('order.add', garage.command({ itemId, orderId, order }));
  await page.goto(`${garage.car()}/item/${itemId}`);
  await page.getByRole('button', { name: 'Change this order' }).click();
  await page.getByLabel('Expected on (optional)').fill('2026-06-30');
  const theirs = { ...order, from: 'the far shop' };
  const change = garage.command({ orderId, baseRevision: 1, order: theirs });
  await garage.api.mutate('order.change', change);
  await page.getByRole('button', { name: 'Save the change' }).click();
  await expect(page.getByText(/^Not saved: somebody saved another version/)).toBeVisible();
  await expect(page.getByRole('table')).toContainText('the far shop');
  await page.getByRole('button', { name: 'Keep the newest' }).click();
  const form = page.getByRole('form', { name: 'Change this order' });
  await expect(form.getByLabel('From where (optional)')).toHaveValue('the far shop');
});
