import { expect } from '@playwright/test';
import type { EventList } from '@quartermark/api/client';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { BRAKE_FLUID, type OwnGarage, test } from '../../support/browser/garage-test.ts';

async function fill(garage: OwnGarage): Promise<void> {
  await garage.watch(BRAKE_FLUID);
  await garage.watch({ name: 'Harness', limits: [{ measure: 'date', value: '2027-03-01' }] });
  await garage.watch({ name: 'Timing belt', limits: [{ measure: 'months', value: 60 }] });
  await garage.write({ kind: 'session', use: 'circuit', sessions: 4, on: '2026-05-10' });
  await garage.counted();
}

test('what a car might do is answered beside today’s dates, and nothing is saved', async ({
  page,
  garage,
}) => {
  await fill(garage);
  const before = await garage.view();
  await page.goto(garage.car());
  // two presses from the car
  await page.getByRole('navigation', { name: 'This car' }).getByText('What if').click();
  await page.waitForURL(/\/what-if$/);
  await page.getByLabel('Day', { exact: true }).fill('2026-06-20');
  await page.getByLabel('Sessions').fill('16');
  await page.getByRole('button', { name: 'See what changes' }).click();

  await expect(page.getByRole('heading', { level: 1 })).toContainText(
    'Brake fluid is likely to run out before the end of it: latest work Fri 19 June',
  );
  const changes = page.getByRole('region', { name: 'What changes' });
  await expect(changes.getByRole('heading', { level: 2 })).toHaveText([
    'What runs out before the end',
    'What changes',
    'What stays as it is',
    'Not on record, or only in part',
    'Is it to be?',
  ]);
  const fluid = changes.getByRole('listitem').filter({ hasText: 'As it stands' });
  await expect(fluid).toContainText('days sooner');
  await expect(fluid).toContainText('With it addedDue soon: likely by Sat 20 June');
  await expectAccessible(page, 'a what-if, answered');

  await expect(page).toHaveURL(/\/what-if\?add=circuit\+2026-06-20\+sessions\+16$/);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('latest work Fri 19 June');
  await expect(page.getByLabel('Sessions')).toHaveValue('16');
  const after = await garage.view();
  expect([after.version, after.wantedVersion]).toEqual([before.version, before.wantedVersion]);
  expect(after.analysis).toEqual(before.analysis);
});

test('a line that cannot be worked out is marked at its field, and a line taken away comes back', async ({
  page,
  garage,
}) => {
  await fill(garage);
  await page.goto(`${garage.car()}/what-if`);
  await page.getByRole('button', { name: 'See what changes' }).click();
  await expect(page.getByText('Choose the day it begins.')).toBeVisible();
  await page.getByLabel('Day', { exact: true }).fill('2026-06-14');
  await expect(page.getByText('This day has passed; choose today or a later day.')).toBeVisible();
  await page.getByLabel('Day', { exact: true }).fill('2026-06-27');
  await page.getByLabel('Sessions').fill('five');
  await expect(page.getByText(/"five" is not a number/)).toBeVisible();
  await expectAccessible(page, 'a what-if with a field to mend');
  await page.getByLabel('Sessions').fill('5');

  await page.getByRole('button', { name: 'Add a line' }).click();
  const second = page.getByRole('group', { name: 'Line 2' });
  await second.getByLabel('What').selectOption('roadTrip');
  await second.getByLabel('Day', { exact: true }).fill('2026-07-24');
  await second.getByRole('textbox', { name: 'Distance' }).fill('1,100');
  await page.getByRole('button', { name: 'Take line 2 away' }).click();
  await expect(second).toBeHidden();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(second.getByRole('textbox', { name: 'Distance' })).toHaveValue('1,100');
  await page.getByRole('button', { name: 'See what changes' }).click();
  await expect(page.getByText('Road trip, 24 July 2026: 1,100 km')).toBeVisible();
  await expect(page).toHaveURL(/add=roadTrip\+2026-07-24\+distance\+1%2C100\+km$/);
});

test('an address whose day has passed says so at the field', async ({ page, garage }) => {
  await fill(garage);
  await page.goto(`${garage.car()}/what-if?add=circuit+2026-06-01+sessions+4&add=nonsense`);
  await expect(page.getByText('This day has passed; choose today or a later day.')).toBeVisible();
  await expect(page.getByText('One line of this address could not be read')).toBeVisible();
  await expect(page.getByLabel('Sessions')).toHaveValue('4');
});

test('what was asked is put on the calendar, and the calendar says what runs out before it ends', async ({
  page,
  garage,
}) => {
  await fill(garage);
  await page.goto(`${garage.car()}/what-if?add=circuit+2026-06-20+2026-06-21+sessions+16`);
  await page.getByRole('link', { name: 'Put it on the calendar' }).click();
  await page.waitForURL(/\/events\/add\?plan=/);
  await expect(page.getByLabel('First day')).toHaveValue('2026-06-20');
  await expect(page.getByLabel('Last day (optional)')).toHaveValue('2026-06-21');
  await expect(page.getByLabel('Sessions')).toHaveValue('16');
  await expect(page.getByRole('checkbox', { name: garage.name })).toBeChecked();
  await page.getByLabel('Name').fill('Two days');
  await page.getByRole('button', { name: 'Add the event' }).click();
  await page.waitForURL(/\/events$/);
  const { api, garageId, carId } = garage;
  const { events } = await api.query<EventList>('event.list', { garageId });
  expect(events[0]?.event).toMatchObject({
    start: '2026-06-20',
    end: '2026-06-21',
    cars: [carId],
    use: { sessions: 16 },
  });
  const outlook = page.getByRole('region', { name: 'What runs out before the end of Two days' });
  await expect(outlook).toContainText(
    'Likely to run out before the end: Brake fluid (latest work Fri 19 June',
  );
  await expect(outlook).toContainText('Not on record: Timing belt.');
  // the event is near, so whether it is ready comes first
  await expect(outlook).toContainText(`${garage.name}: Not in time`);
  await expectAccessible(page, 'the calendar with what runs out');
});
