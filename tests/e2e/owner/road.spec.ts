import { expect, type Page } from '@playwright/test';
import { usualRequirements } from '@quartermark/engine/readiness';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { type OwnGarage, TODAY, test } from '../../support/browser/garage-test.ts';

const km = (value: number) => ({ text: String(value), unit: 'km' as const });

/** All that the road asks is on record: the odometer, the stick, oil and brake fluid watched and lately done. */
async function readyForTheRoad(garage: OwnGarage, odometerOn = '2026-06-13'): Promise<void> {
  for (const [name, role] of [
    ['Engine oil', 'engineOil'],
    ['Brake fluid', 'brakeFluid'],
  ] as const)
    await garage.watch({
      name,
      role,
      limits: [{ measure: 'months', value: 12 }],
      baseline: { on: '2026-05-01', historyComplete: true },
    });
  await garage.write({ kind: 'odometer', on: odometerOn, odometer: km(41_000) });
  await garage.write({
    kind: 'oilCheck',
    on: '2026-06-13',
    level: { how: 'fraction', fraction: 1, step: 0.25 },
  });
  await garage.counted();
}

const answer = (page: Page) => page.getByRole('heading', { level: 1 });
const urgent = (page: Page) => page.getByRole('complementary', { name: 'Urgent' });
const laneOf = (page: Page, garage: OwnGarage) =>
  page
    .getByRole('listitem')
    .filter({ has: page.getByRole('heading', { level: 2, name: garage.name }) });

/** The garage and the car's page both call it ready, before anything happens. */
async function expectReady(page: Page, garage: OwnGarage): Promise<void> {
  await page.goto(garage.home());
  await expect(answer(page)).toHaveText('Ready for the road, by the log.');
  await expect(laneOf(page, garage).getByText('Ready, by the log')).toBeVisible();
  await page.goto(garage.car());
  await expect(answer(page)).toContainText(/^Ready for the road, by the log\./);
}

async function expectNotReady(page: Page, garage: OwnGarage, word: string | RegExp): Promise<void> {
  await garage.counted();
  await page.goto(garage.home());
  await expect(answer(page)).not.toContainText('Ready for the road, by the log');
  await expect(answer(page)).toContainText(garage.name);
  await expect(laneOf(page, garage).getByText('Ready, by the log')).toHaveCount(0);
  await expect(laneOf(page, garage).getByText(word).first()).toBeVisible();
  await page.goto(garage.car());
  await expect(answer(page)).not.toContainText('Ready for the road, by the log');
}

/** Opens all that the road asks, and gives one need of it. */
async function needOf(page: Page, title: string | RegExp) {
  const road = page.getByRole('region', { name: 'What the road asks' });
  await road.locator('summary').filter({ hasText: 'What the road asks' }).click();
  return road
    .getByRole('listitem')
    .filter({ has: page.getByRole('heading', { level: 3, name: title }) });
}

test('a car whose oil was drained and not filled is not ready, and says where to write down that it was', async ({
  page,
  garage,
}) => {
  await readyForTheRoad(garage);
  await expectReady(page, garage);
  await garage.write({
    kind: 'oilChange',
    on: TODAY,
    drained: { text: '4.5', unit: 'l' },
    filterRenewed: false,
  });
  await expectNotReady(page, garage, /Not in time/);
  await expect(answer(page)).toContainText('Oil drained');
  await expect(page.getByRole('region', { name: 'Going out again' })).toContainText(
    'In the way: Oil was drained on 15 June 2026',
  );
  const drained = await needOf(page, 'Oil drained');
  await expect(drained).toContainText('Not met');
  await expectAccessible(page, 'a car with what the road asks');
  await drained.getByRole('link', { name: /^Record it/ }).click();
  await page.waitForURL(/\/oilChange$/);
});

test('a soft pedal stops the word until somebody has looked', async ({ page, garage }) => {
  await readyForTheRoad(garage);
  await expectReady(page, garage);
  const { id } = await garage.write({ kind: 'incident', what: 'softPedal', on: TODAY });
  await expectNotReady(page, garage, 'Not looked over');
  await expect(answer(page)).toContainText('Soft brake pedal on 15 June 2026');
  const pedal = await needOf(page, 'Soft brake pedal');
  await expect(pedal).toContainText('Not met');
  await garage.write({ kind: 'answer', notice: id, answer: 'Bled, pedal firm', on: TODAY });
  await garage.counted();
  await expectReady(page, garage);
});

test('an odometer that nobody read for long makes it not on record', async ({ page, garage }) => {
  await readyForTheRoad(garage, '2026-04-20');
  await expectNotReady(page, garage, /Not on record/);
  await expect(answer(page)).toContainText('Odometer');
  const odometer = await needOf(page, 'Odometer');
  await expect(odometer).toContainText('Last read 56 days ago');
  await odometer.getByRole('link', { name: /^Record it/ }).click();
  await page.getByRole('textbox', { name: 'Odometer' }).fill('41900');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await garage.counted();
  await expectReady(page, garage);
});

test('pads that are not bedded are told to whoever goes out again, and asked of the road', async ({
  page,
  garage,
}) => {
  await readyForTheRoad(garage);
  const set = await garage.keep({
    kind: 'component',
    sort: 'pads',
    name: 'Front pads, hard',
    condition: 'new',
  });
  await garage.write({ kind: 'fit', component: set, change: 'on', on: TODAY, condition: 'new' });
  await garage.counted();
  await page.goto(garage.car());
  await expect(page.getByRole('region', { name: 'Going out again' })).toContainText(
    'Front pads, hard: not bedded.',
  );
  const bedding = await needOf(page, 'Front pads, hard, bedding');
  await expect(bedding).toContainText('After the work');
  await expect(bedding).toContainText('advice');
});

test('pads that are not bedded take "Ready" from an event until they are', async ({
  page,
  garage,
}) => {
  const usual = usualRequirements('circuit');
  // nothing else is asked, so nothing else can be what takes the word away
  const off = Object.fromEntries(Object.keys(usual.weights).map((need) => [need, 'off']));
  const requirements = { ...usual, weights: { ...off, bedding: 'blocking' } };
  const eventId = crypto.randomUUID();
  const event = {
    name: 'Club day',
    sort: 'circuit',
    start: '2026-06-20',
    cars: [garage.carId],
    requirements,
  };
  await garage.api.mutate('event.add', garage.command({ eventId, event }));
  const set = await garage.keep({
    kind: 'component',
    sort: 'pads',
    name: 'Front pads, hard',
    condition: 'new',
  });
  const there = `${garage.home()}/events/${eventId}`;
  await page.goto(there);
  await expect(answer(page)).toContainText('Ready for Saturday, by the log');
  await garage.write({ kind: 'fit', component: set, change: 'on', on: TODAY, condition: 'new' });
  await page.goto(there);
  await expect(answer(page)).not.toContainText('Ready for Saturday, by the log');
  await expect(page.getByText(/Can be ready by .*Front pads, hard, bedding/).first()).toBeVisible();
});

test('a finding that forbids driving stands at the head of another window within moments', async ({
  page,
  garage,
}) => {
  const other = await garage.another('Ossery Pell');
  await other.counted();
  await page.goto(`${garage.home()}/log`);
  await page.evaluate('globalThis.neverReloaded = true');
  await expect(urgent(page)).toHaveCount(0);
  const window = await page.context().newPage();
  await window.goto(other.record('finding'));
  await window.getByLabel('What you found').fill('Brake hose cracked');
  await window.getByRole('radio', { name: /Do not drive/ }).click();
  await window.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(urgent(page)).toContainText(
    'Ossery Pell: do not drive, Brake hose cracked, since 15 June 2026.',
    { timeout: 5_000 },
  );
  expect(await page.evaluate('globalThis.neverReloaded')).toBe(true);
  await expect(urgent(page).getByRole('button', { name: /^Seen/ })).toHaveCount(0);
  await expectAccessible(page, 'a page with what is urgent');
  await urgent(page).getByRole('link', { name: 'Ossery Pell' }).click();
  await page.waitForURL(new RegExp(`${other.carId}$`));
});

test('wheels that are off can be laid aside on this device, until it is another fact', async ({
  page,
  garage,
}) => {
  await garage.write({ kind: 'wheels', change: 'off', on: '2026-06-14' });
  await garage.counted();
  await page.goto(garage.home());
  await expect(urgent(page)).toContainText('wheels off on 14 June 2026');
  await urgent(page)
    .getByRole('button', { name: `Seen: ${garage.name}` })
    .click();
  await expect(urgent(page)).toHaveCount(0);
  await page.goto(`${garage.home()}/events`);
  await expect(urgent(page)).toHaveCount(0);
  await garage.write({
    kind: 'oilCheck',
    on: TODAY,
    level: { how: 'none' },
  });
  await expect(urgent(page)).toContainText('oil none on the stick', { timeout: 5_000 });
});

test('in the paddock the phone tells what forbids driving another car', async ({
  page,
  garage,
}) => {
  const other = await garage.another('Ossery Pell');
  await other.write({ kind: 'incident', what: 'softPedal', on: TODAY });
  await other.counted();
  await garage.counted();
  await page.goto(`/pocket?g=${garage.garageId}&car=${garage.carId}`);
  await expect(page.getByRole('heading', { level: 1, name: garage.name })).toBeVisible();
  await expect(urgent(page)).toContainText('Ossery Pell: soft brake pedal on 15 June 2026');
  await urgent(page).getByRole('button', { name: 'Ossery Pell' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Ossery Pell' })).toBeVisible();
  await expect(urgent(page)).toHaveCount(0);
});

test('on the day of an event the garage leads there first, with the car last recorded for', async ({
  page,
  garage,
}) => {
  const eventId = crypto.randomUUID();
  const event = { name: 'Club day', sort: 'circuit', start: TODAY, cars: [garage.carId] };
  await garage.api.mutate('event.add', garage.command({ eventId, event }));
  await garage.counted();
  await page.goto(garage.home());
  const first = page.getByRole('main').getByRole('link').first();
  await expect(first).toHaveText('Club day is on today.');
  await expect(first).toHaveAttribute('href', new RegExp(`/events/${eventId}$`));
  await page.goto(garage.record('odometer'));
  await page.getByRole('textbox', { name: 'Odometer' }).fill('41000');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await garage.logOf(1);
  await page.goto(garage.home());
  await expect(first).toHaveAttribute(
    'href',
    new RegExp(`/events/${eventId}\\?car=${garage.carId}$`),
  );
  await expect(
    page.getByRole('link', { name: `What happened to ${garage.name}?` }),
  ).toHaveAttribute('href', new RegExp(`/record/${garage.carId}$`));
});
