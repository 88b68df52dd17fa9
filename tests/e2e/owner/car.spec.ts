import { expect } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { BRAKE_FLUID, ENGINE_OIL, test } from '../../support/browser/garage-test.ts';

test('a car without anything to watch offers the next step', async ({ page, garage }) => {
  await garage.counted();
  await page.goto(garage.car());
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Not on record');
  await expect(page.getByText('Nothing is watched on this car yet.')).toBeVisible();
  await expect(page.getByRole('link', { name: 'Add an item' })).toBeVisible();
  await expect(page.getByText('Nothing is on record yet.')).toBeVisible();
  await expectAccessible(page, 'a car without items');
});

test('the why of an item names the entries it rests on, and each leads to its own page', async ({
  page,
  garage,
}) => {
  await garage.watch(BRAKE_FLUID);
  await garage.write({ kind: 'session', use: 'circuit', sessions: 5, on: '2026-05-09' });
  const { id } = await garage.write({
    kind: 'session',
    use: 'circuit',
    sessions: 4,
    on: '2026-06-06',
  });
  await garage.counted();
  await page.goto(garage.car());
  const items = page.getByRole('region', { name: 'Items' });
  // 18 - 5 - 4 = 9
  await expect(items).toContainText('9 sessions left');
  await items.getByRole('button', { name: 'Why: Brake fluid' }).click();
  await expect(items).toContainText('9 sessions counted since 1 May 2026');
  await items.getByRole('button', { name: /2 entries it rests on: Brake fluid/ }).click();
  await expect(items.locator(`a[href$="/entry/${id}"]`)).toBeVisible();
  await expectAccessible(page, 'a car with a why and its entries opened');
});

test('the history is narrowed by kind and by words, shows removed ones on demand, and survives a reload', async ({
  page,
  garage,
}) => {
  await garage.write({ kind: 'note', note: 'Belt squeals when cold.', on: '2026-06-01' });
  await garage.write({ kind: 'note', note: 'Left mirror cracked.', on: '2026-06-02' });
  await garage.write({ kind: 'fuel', volume: { text: '41,20', unit: 'l' }, on: '2026-06-03' });
  const { id } = await garage.write({ kind: 'note', note: 'Wrong car.', on: '2026-06-04' });
  await garage.api.mutate('entry.remove', garage.command({ entryId: id, baseRevision: 1 }));

  await page.goto(garage.car());
  const history = page.getByRole('region', { name: 'History' });
  const rows = history.getByRole('listitem');
  await expect(rows).toHaveCount(3);
  // as typed, with its comma and its nought
  await expect(rows.first()).toContainText('41,20 L');
  await history.getByLabel('Kind').selectOption('note');
  await expect(rows).toHaveCount(2);
  await history.getByLabel('Words in it').fill('squeals');
  await expect(rows).toHaveCount(1);
  await page.waitForURL(/text=squeals/);
  await page.reload();
  await expect(rows).toHaveCount(1);
  await expect(rows.first()).toContainText('Belt squeals when cold.');
  await history.getByLabel('Words in it').fill('');
  await history.getByRole('checkbox', { name: 'Removed ones too' }).click();
  await expect(rows).toHaveCount(3);
  await expect(rows.filter({ hasText: 'Wrong car.' })).toContainText('Removed');
});

test('an old entry is reached by "Show older entries", each is there once', async ({
  page,
  garage,
}) => {
  for (let day = 1; day <= 31; day += 1)
    for (const note of ['morning', 'evening'])
      await garage.write({
        kind: 'note',
        note: `${note} ${day}`,
        on: `2026-05-${String(day).padStart(2, '0')}`,
      });
  await page.goto(garage.car());
  const history = page.getByRole('region', { name: 'History' });
  const older = history.getByRole('button', { name: 'Show older entries' });
  const rows = history.getByRole('listitem');
  for (let shown = await rows.count(); shown < 62; shown = await rows.count()) {
    await older.click();
    await expect.poll(() => rows.count()).toBeGreaterThan(shown);
  }
  await expect(older).toHaveCount(0);
  await expect(rows).toHaveCount(62);
  const words = await rows.allTextContents();
  expect(new Set(words).size).toBe(62);
});

test('a car is laid up in words, and what has run out waits until before it wakes', async ({
  page,
  garage,
}) => {
  await garage.watch({ ...ENGINE_OIL, limits: [{ measure: 'date', value: '2026-06-01' }] });
  await garage.write({ kind: 'layUp', on: '2026-06-10' });
  await garage.counted();
  await page.goto(garage.car());
  await expect(page.getByRole('region', { name: 'Items' })).toContainText('Before it wakes');
  await expect(page.getByText('Overdue')).toHaveCount(0);
  await expect(page.getByText(/Laid up since 10 June 2026/).first()).toBeVisible();
  await page.goto(garage.home());
  await expect(page.getByText('Laid up since 10 June 2026')).toBeVisible();
});
