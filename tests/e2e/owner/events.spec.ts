import { expect } from '@playwright/test';
import type { EventList } from '@quartermark/api/client';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { type OwnGarage, test } from '../../support/browser/garage-test.ts';
import { goTo } from '../../support/browser/go-to.ts';

const calendar = async ({ api, garageId }: OwnGarage) =>
  (await api.query<EventList>('event.list', { garageId })).events;

async function put(garage: OwnGarage, event: object): Promise<string> {
  const eventId = crypto.randomUUID();
  await garage.api.mutate('event.add', garage.command({ eventId, event }));
  return eventId;
}

test('an event is put on the calendar with its days and the car that goes, and undo takes it off', async ({
  page,
  garage,
}) => {
  await page.goto(garage.home());
  await goTo(page, 'Events');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Nothing that comes');
  await page.getByRole('link', { name: 'Add an event' }).click();
  await page.getByRole('button', { name: 'Add the event' }).click();
  await expect(page.getByText('Choose the day it begins.').first()).toBeVisible();
  await page.getByLabel('Name').fill('Four days over the passes');
  await page.getByRole('radio', { name: 'Road trip' }).click();
  await page.getByLabel('First day').fill('2026-07-24');
  await page.getByLabel('Last day (optional)').fill('2026-07-20');
  await page.getByRole('checkbox', { name: garage.name }).click();
  await page.getByRole('button', { name: 'Add the event' }).click();
  await expect(page.getByText(/last day is before the first/i).first()).toBeVisible();
  await page.getByLabel('Last day (optional)').fill('2026-07-27');
  await expectAccessible(page, 'adding an event');
  await page.getByRole('button', { name: 'Add the event' }).click();

  await page.waitForURL(/\/events$/);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Next is Four days over the passes, in 39 days: 24 to 27 July 2026.',
  );
  const coming = page.getByRole('region', { name: 'What comes' });
  await expect(coming.getByRole('listitem')).toContainText(`Cars: ${garage.name}`);
  expect((await calendar(garage))[0]?.event).toMatchObject({
    sort: 'roadTrip',
    start: '2026-07-24',
    end: '2026-07-27',
    cars: [garage.carId],
  });
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Nothing that comes');
  expect(await calendar(garage)).toEqual([]);
});

test('the calendar puts what comes before what is over, by date', async ({ page, garage }) => {
  await put(garage, { name: 'Third round', sort: 'autocross', start: '2026-07-05' });
  await put(garage, { name: 'Circuit day', sort: 'circuit', start: '2026-06-20' });
  await put(garage, { name: 'Evening meet', sort: 'meet', start: '2026-06-05' });
  await page.goto(`${garage.home()}/events`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Next is Circuit day, in 5 days: 20 June 2026.',
  );
  await expect(page.getByRole('heading', { level: 3 })).toContainText([
    'Circuit day',
    'Third round',
    'Evening meet',
  ]);
  await expect(page.getByRole('region', { name: 'The last 30 days' })).toContainText('10 days ago');
});

test('an event is changed, and cancelled with a way back', async ({ page, garage }) => {
  const eventId = await put(garage, { name: 'Circuit day', sort: 'circuit', start: '2026-06-20' });
  await page.goto(`${garage.home()}/events`);
  await page.getByRole('link', { name: 'Circuit day' }).click();
  await page.getByRole('link', { name: 'Change the event' }).first().click();
  await page.getByLabel('First day').fill('2026-06-21');
  await page.getByRole('button', { name: 'Save the change' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('in 6 days');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('in 5 days');
  expect((await calendar(garage))[0]).toMatchObject({ eventId, revision: 3 });

  await page.getByRole('link', { name: 'Circuit day' }).click();
  await page.getByRole('link', { name: 'Change the event' }).first().click();
  await page.getByRole('button', { name: 'Cancel the event' }).click();
  await expect(page.getByText('Circuit day is cancelled.')).toBeVisible();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Nothing that comes');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('in 5 days');
});

test('two people change one event: the second sees both versions', async ({ page, garage }) => {
  const eventId = await put(garage, { name: 'Circuit day', sort: 'circuit', start: '2026-06-20' });
  await page.goto(`${garage.home()}/events/${eventId}/change`);
  // the form stands once its fields hold what was written
  await expect(page.getByLabel('Name')).toHaveValue('Circuit day');
  await page.getByLabel('Place').fill('the far bend');
  const event = { name: 'Circuit day', sort: 'circuit', start: '2026-06-22' };
  await garage.api.mutate('event.change', garage.command({ eventId, baseRevision: 1, event }));
  await page.getByRole('button', { name: 'Save the change' }).click();
  await expect(page.getByText(/^Not saved: somebody saved another version/)).toBeVisible();
  const both = page.getByRole('table');
  await expect(both).toContainText('22 June 2026');
  await expect(both).toContainText('the far bend');
  await page.getByRole('button', { name: 'Keep the newest' }).click();
  await expect(page.getByLabel('First day')).toHaveValue('2026-06-22');
});
