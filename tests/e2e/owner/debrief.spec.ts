import { expect, type Page } from '@playwright/test';
import type { EntryView, UnrecordedEvents } from '@quartermark/api/client';
import type { EventDraft } from '@quartermark/engine/log';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { unfold } from '../../support/browser/forms.ts';
import { type OwnGarage, test } from '../../support/browser/garage-test.ts';

const SATURDAY = '2026-06-13';

async function circuitDay(
  garage: OwnGarage,
  cars: readonly string[],
  more: Partial<EventDraft> = {},
) {
  const eventId = crypto.randomUUID();
  const event = { name: 'Circuit day', sort: 'circuit', start: SATURDAY, cars, ...more };
  await garage.api.mutate('event.add', garage.command({ eventId, event }));
  return eventId;
}

const unrecorded = async ({ api, garageId }: OwnGarage) =>
  (await api.query<UnrecordedEvents>('event.unrecorded', { garageId })).events;

const save = (page: Page) => page.getByRole('button', { name: 'Save what is filled in' }).click();
const kinds = (log: readonly EntryView[]) => log.map(({ entry }) => entry.kind).toSorted();

test('an event that is over asks what its car did; that it did not go is an answer, with a way back', async ({
  page,
  garage,
}) => {
  await circuitDay(garage, [garage.carId]);
  await page.goto(`${garage.home()}/events`);
  const asks = page.getByRole('region', { name: 'Not on record yet' });
  await expect(asks).toContainText(
    `Circuit day, 13 June: nothing recorded for ${garage.name}. What did it do?`,
  );
  await expectAccessible(page, 'what is not on record yet');
  await asks.getByRole('button', { name: 'It did not go' }).click();
  await expect(page.getByText(`Saved: ${garage.name} did not go.`)).toBeVisible();
  await expect(asks).toHaveCount(0);
  expect(await unrecorded(garage)).toEqual([]);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(asks).toBeVisible();
  expect(await unrecorded(garage)).toHaveLength(1);
  await asks.getByRole('link', { name: 'Debrief' }).click();
  await page.waitForURL(/\/debrief$/);
});

test('a debrief writes each line once, with what was tapped that day as on record already', async ({
  page,
  garage,
}) => {
  const other = await garage.another('Ardvane One');
  const eventId = await circuitDay(garage, [garage.carId, other.carId], { use: { sessions: 5 } });
  await garage.write({ kind: 'session', use: 'circuit', sessions: 3, on: SATURDAY });
  const pads = await garage.keep({
    kind: 'component',
    name: 'Front pads',
    sort: 'pads',
    condition: 'new',
  });
  await garage.write({
    kind: 'fit',
    component: pads,
    change: 'on',
    positions: ['front'],
    on: '2026-05-01',
  });
  await page.goto(`${garage.home()}/events/${eventId}/debrief`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Nothing is on record yet of Ardvane One. What did it do?',
  );
  const car = page.getByRole('region', { name: garage.name });
  await expect(car).toContainText('On record: Circuit: 3 sessions');
  await car.getByRole('button', { name: 'Add to it' }).click();
  await expect(car.getByLabel('Sessions', { exact: true })).toHaveValue('2');
  await car.getByLabel('Oil added there (optional)').fill('0.5');
  await car.getByRole('radio', { name: 'Three quarters' }).click();
  await car.getByLabel('When it was over (optional)').fill('41,200');
  await unfold(page, 'Measure Front pads');
  await car.getByRole('group', { name: 'Front left' }).getByLabel('Inner').fill('7.5');
  await expect(car.getByRole('group', { name: 'Rear left' })).toHaveCount(0);
  await car.getByRole('button', { name: 'Add a finding' }).click();
  await car.getByLabel('What you found').fill('Damper weeps');
  await expectAccessible(page, 'a debrief');
  await save(page);
  // the finding was not weighed: the rest is saved, and it says what is missing
  await expect(car.getByText('Say how bad it is.')).toBeVisible();
  await expect(page.getByText(/^Saved: 4 entries\./)).toBeVisible();
  await car.getByRole('radio', { name: /^Watch/ }).click();
  await page
    .getByRole('region', { name: other.name })
    .getByRole('radio', { name: 'It did not go' })
    .click();
  await save(page);
  await expect(page.getByText(/^Saved: 2 entries\./)).toBeVisible();
  await expect(page.getByRole('region', { name: garage.name })).toContainText('On record: Finding');

  const log = await garage.log();
  expect(kinds(log)).toEqual([
    'finding',
    'fit',
    'measure',
    'odometer',
    'oilTopUp',
    'session',
    'session',
  ]);
  const added = log.find(({ entry }) => entry.kind === 'session' && entry.event === eventId);
  expect(added?.entry).toMatchObject({ sessions: 2, on: SATURDAY });
  expect(kinds(await other.log())).toEqual(['answer']);
  expect(await unrecorded(garage)).toEqual([]);

  await save(page);
  await expect(page.getByText(/^Nothing is left to save\./)).toBeVisible();
  await page.reload();
  await save(page);
  expect(await garage.log()).toHaveLength(7);
  expect(await other.log()).toHaveLength(1);
});

test('a line the server asks about stays with its question; the others are saved', async ({
  page,
  garage,
}) => {
  const eventId = await circuitDay(garage, [garage.carId], { use: { sessions: 4 } });
  await garage.write({
    kind: 'odometer',
    odometer: { text: '42000', unit: 'km' },
    on: '2026-06-01',
  });
  await page.goto(`${garage.home()}/events/${eventId}/debrief`);
  await page.getByRole('radio', { name: 'It went' }).click();
  await expect(page.getByLabel('Sessions', { exact: true })).toHaveValue('4');
  await page.getByLabel('When it was over (optional)').fill('41000');
  await save(page);
  await expect(page.getByText('Not saved yet: is the odometer right?')).toBeVisible();
  await expect(page.getByText('On record: Circuit: 4 sessions')).toBeVisible();
  expect(await garage.log()).toHaveLength(2);
  await page.getByRole('button', { name: 'Save it as typed' }).click();
  await expect(page.getByText('On record: Odometer: 41000 km')).toBeVisible();
  expect(await garage.log()).toHaveLength(3);
});

test('undo takes back what a debrief saved, and it can be saved anew', async ({ page, garage }) => {
  const eventId = await circuitDay(garage, [garage.carId], { use: { sessions: 4 } });
  await page.goto(`${garage.home()}/events/${eventId}/debrief`);
  await page.getByRole('radio', { name: 'It went' }).click();
  await save(page);
  await expect(page.getByText(/^Saved: one entry\./)).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('Undone.')).toBeVisible();
  expect(await garage.log()).toEqual([]);
  await expect(page.getByLabel('Sessions', { exact: true })).toHaveValue('4');
  await save(page);
  await expect(page.getByText(/^Saved: one entry\./)).toBeVisible();
  expect(await garage.log()).toHaveLength(1);
});

test('a car of which nothing is said is asked for it beside its choice, and nothing is written of it', async ({
  page,
  garage,
}) => {
  const eventId = await circuitDay(garage, [garage.carId]);
  await page.goto(`${garage.home()}/events/${eventId}/debrief`);
  await save(page);
  await expect(page.getByText(/^Nothing is left to save\./)).toBeVisible();
  await page.getByRole('radio', { name: 'It went' }).click();
  await save(page);
  await expect(page.getByText('Say what it did there, or that it did not go.')).toBeVisible();
  expect(await garage.log()).toEqual([]);
});
