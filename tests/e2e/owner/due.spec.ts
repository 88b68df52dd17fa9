import { expect, type Page } from '@playwright/test';
import type { ItemDraft } from '@quartermark/engine/log';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { type OwnGarage, test } from '../../support/browser/garage-test.ts';
import { goTo } from '../../support/browser/go-to.ts';

const names = (page: Page) => page.getByRole('main').getByRole('heading', { level: 3 });
const groups = (page: Page) => page.getByRole('main').getByRole('heading', { level: 2 });

/** Labels, because their days are certain: overdue, soon and far off on one car, soon on another, and one unknown. */
async function fill(garage: OwnGarage): Promise<OwnGarage> {
  const label = (name: string, value: string): ItemDraft => ({
    name,
    limits: [{ measure: 'date', value }],
  });
  const other = await garage.another('Ossery Pell');
  await garage.watch(label('Harness', '2026-06-01'));
  await garage.watch({ ...label('Extinguisher', '2026-06-24'), leadDays: 3 });
  await garage.watch(label('Road inspection', '2027-02-10'));
  await garage.watch({ name: 'Timing belt', limits: [{ measure: 'months', value: 60 }] });
  await other.watch(label('Seat', '2026-06-22'));
  await garage.counted();
  await other.counted();
  return other;
}

test('what is due stands by its day, overdue first and what is not on record at the end', async ({
  page,
  garage,
}) => {
  const other = await fill(garage);
  await page.goto(garage.home());
  await page.getByRole('link', { name: 'All that is due, by its day' }).click();
  await page.waitForURL(/\/due$/);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'One thing is overdue and two likely due before 30 June.',
  );
  await expect(page.getByText('Then Seat of Ossery Pell, likely by Mon 22 June.')).toBeVisible();
  await expect(groups(page)).toHaveText([
    'Overdue',
    'Week of Mon 22 June',
    'February 2027',
    'Not on record, or only in part',
  ]);
  await expect(names(page)).toHaveText([
    'Harness',
    'Seat',
    'Extinguisher',
    'Road inspection',
    'Timing belt',
  ]);
  const row = page.getByRole('listitem').filter({ hasText: 'Extinguisher' });
  await expect(row).toContainText('Due soon: the label says 24 June 2026');
  await expect(row).toContainText('Order the parts by 21 June, they take 3 days.');
  await expectAccessible(page, 'what is due');
  await page.getByRole('link', { name: /^Done now\s?: Seat, Ossery Pell/ }).click();
  await page.waitForURL(new RegExp(`/record/${other.carId}/service\\?item=`));
});

test('sort and filter stand in the address and survive a reload', async ({ page, garage }) => {
  const other = await fill(garage);
  await page.goto(garage.home());
  await goTo(page, 'What is due');
  await page.getByLabel('Sort by').selectOption('car');
  await expect(groups(page)).toHaveText([
    'Ossery Pell',
    garage.name,
    'Not on record, or only in part',
  ]);
  await page.getByLabel('Car', { exact: true }).selectOption(garage.carId);
  await page.getByLabel('Before').fill('2026-06-25');
  await expect(names(page)).toHaveText(['Harness', 'Extinguisher', 'Timing belt']);
  await expect(page).toHaveURL(
    new RegExp(`/due\\?sort=car&car=${garage.carId}&before=2026-06-25$`),
  );
  await page.reload();
  await expect(names(page)).toHaveText(['Harness', 'Extinguisher', 'Timing belt']);
  await expect(page.getByLabel('Before')).toHaveValue('2026-06-25');
  // the day itself is not before itself
  await page.getByLabel('Before').fill('2026-06-24');
  await expect(names(page)).toHaveText(['Harness', 'Timing belt']);
  await page.getByLabel('State').selectOption('overdue');
  await expect(names(page)).toHaveText(['Harness']);
  await page.getByLabel('Car', { exact: true }).selectOption(other.carId);
  await expect(page.getByText('No line fits.')).toBeVisible();
  await page.getByRole('button', { name: 'Show all cars, states and days' }).click();
  await expect(names(page)).toHaveCount(5);
  await expect(page).toHaveURL(/\/due\?sort=car$/);
});

test('what is done leaves its place on an open list, and a laid-up car waits until it wakes', async ({
  page,
  garage,
}) => {
  const other = await fill(garage);
  await page.goto(`${garage.home()}/due`);
  await expect(page.getByRole('listitem').filter({ hasText: 'Seat' })).toContainText('Due soon');
  await other.write({ kind: 'layUp', on: '2026-06-10' } as never);
  await expect(groups(page)).toContainText(['Before it wakes: laid-up cars']);
  await expect(page.getByRole('listitem').filter({ hasText: 'Seat' })).toContainText(
    'Before it wakes',
  );
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'One thing is overdue and one likely due before 30 June.',
  );
});

test('on paper the list is bare, with its day and its end', async ({ page, garage }) => {
  await fill(garage);
  await page.goto(`${garage.home()}/due`);
  await expect(page.getByText('Void after any entry.')).toBeHidden();
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText('Void after any entry.')).toBeVisible();
  await expect(page.getByText('By the log of 15 June 2026')).toBeVisible();
  await expect(page.getByLabel('Sort by')).toBeHidden();
  await expect(page.getByRole('link', { name: /^Done now/ }).first()).toBeHidden();
  await expect(names(page)).toHaveCount(5);
});
