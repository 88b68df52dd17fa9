import { expect, type Locator, type Page } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import {
  BRAKE_FLUID,
  ENGINE_OIL,
  type OwnGarage,
  test,
} from '../../support/browser/garage-test.ts';

/** From here on there is room for the board; before that its lanes are a list. */
const ROOM_PX = 900;
const hasRoom = (page: Page) => (page.viewportSize()?.width ?? 0) >= ROOM_PX;

const put = (garage: OwnGarage, event: object) =>
  garage.api.mutate('event.add', garage.command({ eventId: crypto.randomUUID(), event }));

/**
 * Brake fluid is due on 1 July, the circuit day is on 20 June, the trip begins on 24 July. Engine oil: 10,000 km
 * from 41,000 on, 45,000 read; 4,000 km in the 45 days since 1 May are 89 a day, so the rest lasts some 70 days,
 * and less than 40 one time in ten.
 */
async function season(garage: OwnGarage): Promise<void> {
  await garage.watch({
    ...BRAKE_FLUID,
    limits: [{ measure: 'date', value: '2026-07-01' }],
    warnDays: 7,
  });
  await garage.watch(ENGINE_OIL);
  await garage.write({ kind: 'odometer', odometer: { text: '45000', unit: 'km' } });
  await put(garage, { name: 'Circuit day', sort: 'circuit', start: '2026-06-20' });
  await put(garage, {
    name: 'Over the passes',
    sort: 'roadTrip',
    start: '2026-07-24',
    end: '2026-07-27',
    cars: [garage.carId],
  });
  await garage.counted();
}

async function leftOf(locator: Locator): Promise<number> {
  const box = await locator.boundingBox();
  if (!box) throw new Error('it is not on the screen');
  return box.x;
}

test('a date on the board stands between the event before it and the event after it', async ({
  page,
  garage,
}) => {
  await season(garage);
  await page.goto(garage.home());
  const lane = page.getByRole('listitem').filter({
    has: page.getByRole('heading', { level: 2, name: garage.name }),
  });
  const fluid = lane.getByRole('listitem').filter({ hasText: 'Brake fluid' });
  await expect(fluid).toContainText('In limits, the label says 1 July 2026');
  const oil = lane.getByRole('listitem').filter({ hasText: 'Engine oil' });
  // the circuit day comes before either could be due
  await expect(oil).toBeHidden();
  await lane.getByRole('button', { name: 'Show all' }).click();
  await expect(oil).toContainText(/In limits, likely by \d+ (?:August|September); 6,000 km left/);
  await expect(oil).toContainText(/could be as early as \d+ (?:July|August)/);
  if (!hasRoom(page)) {
    await expect(fluid).toContainText('before Over the passes');
    await expect(page.getByRole('link', { name: /^Circuit day/ })).toBeHidden();
    return;
  }
  const circuit = await leftOf(page.getByRole('link', { name: /^Circuit day/ }).locator('span'));
  const trip = await leftOf(page.getByRole('link', { name: /^Over the passes/ }).locator('span'));
  const due = await leftOf(fluid.locator('svg'));
  expect(due).toBeGreaterThan(circuit);
  expect(due).toBeLessThan(trip);
  // the whisker begins at the early day and ends on the likely one, where the mark stands
  const whisker = await oil.locator('[class*="whisker"]').boundingBox();
  const mark = await leftOf(oil.locator('svg'));
  if (!whisker) throw new Error('there is no whisker on the screen');
  expect(whisker.x).toBeGreaterThan(due);
  expect(Math.abs(whisker.x + whisker.width - mark)).toBeLessThan(30);
  await expectAccessible(page, 'the board with a lane opened');
  await page.getByRole('link', { name: /^Over the passes/ }).focus();
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/events\/[\da-f-]{36}$/);
});

test('the board has its facts in a table behind it', async ({ page, garage }) => {
  await season(garage);
  await page.goto(garage.home());
  const fold = page.locator('summary').filter({ hasText: 'As a table' });
  if (!hasRoom(page)) {
    await expect(fold).toBeHidden();
    return;
  }
  await fold.click();
  const fluid = page.getByRole('row').filter({ hasText: 'Brake fluid' });
  await expect(fluid.getByRole('cell').nth(2)).toHaveText('1 July 2026');
  await expect(fluid.getByRole('cell').nth(3)).toHaveText('1 July 2026');
  await expect(fluid.getByRole('cell').nth(4)).toHaveText('Over the passes, 24 July 2026');
  await expectAccessible(page, 'the board with its table');
});

test('what forbids driving stands beside the car, and the lane says how much more there is', async ({
  page,
  garage,
}) => {
  for (const name of ['Coolant', 'Belts', 'Hoses', 'Battery'])
    await garage.watch({ name, limits: [{ measure: 'date', value: '2026-06-01' }] });
  await garage.write({
    kind: 'finding',
    what: 'Brake hose cracked',
    where: 'rearLeft',
    severity: 'doNotDrive',
  });
  await garage.counted();
  await page.goto(garage.home());
  await expect(page.getByRole('heading', { level: 1 })).toContainText('(do not drive)');
  const lane = page.getByRole('listitem').filter({
    has: page.getByRole('heading', { level: 2, name: garage.name }),
  });
  await expect(lane.getByText('Do not drive', { exact: true })).toBeVisible();
  await expect(lane.getByText('and 1 more that asks for something')).toBeVisible();
});
