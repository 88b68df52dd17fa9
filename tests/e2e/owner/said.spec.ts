import { expect } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { test } from '../../support/browser/garage-test.ts';

const PADS = {
  name: 'Front pads',
  limits: [{ measure: 'sessions' as const, value: 12 }],
  baseline: { on: '2025-03-01', historyComplete: true },
};
const session = (on: string) => ({
  kind: 'session' as const,
  use: 'circuit' as const,
  on,
  sessions: 4,
});

/** Four sessions in each month from March on: by the third of them the pads are through. */
const MONTHS = ['2025-03-20', '2025-05-20', '2025-07-20'];

test('what was said of the pads is held against the day they were through', async ({
  page,
  garage,
}) => {
  await garage.watch(PADS);
  for (const on of MONTHS) await garage.write(session(on));
  await garage.counted();

  // from the ways around the garage
  await page.goto(garage.home());
  const more = page.getByRole('button', { name: 'More' });
  if (await more.isVisible()) await more.click();
  await page.getByRole('link', { name: 'We said, it was' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    /^The one date with an outcome fell (in|out)side what was said\.$/,
  );
  await expect(page.getByText('too few yet to say')).toBeVisible();
  await expect(page.getByText('Of the one car here.')).toBeVisible();

  const line = page.getByRole('listitem').filter({ hasText: 'Front pads' }).first();
  await expect(line.getByRole('heading', { level: 3 })).toHaveText(`Front pads, ${garage.name}`);
  await expect(line).toContainText(
    'For 1 July 2025, worked out afterwards from the log: likely by',
  );
  await expect(line).toContainText('A limit was reached on 20 July 2025');
  await expect(line).toContainText('To run out first: its sessions.');
  await expectAccessible(page, 'we said, it was');

  // the log decides: without its last session the pads are not through
  const [last] = await garage.log();
  await garage.api.mutate(
    'entry.remove',
    garage.command({ entryId: last?.entry.id, baseRevision: 1 }),
  );
  await page.reload();
  await expect(page.getByText('A limit was reached on 20 July 2025')).toHaveCount(0);
});

test('an item’s why leads to what came of such days, of its car alone', async ({
  page,
  garage,
}) => {
  await garage.watch(PADS);
  const other = await garage.another('The other one');
  await other.watch({ ...PADS, name: 'Other pads' });
  for (const each of [garage, other])
    for (const on of MONTHS.slice(0, 2)) await each.write(session(on));
  await garage.counted();
  await other.counted();

  await page.goto(garage.car());
  await page.getByRole('button', { name: 'Why: Front pads' }).click();
  await page.getByRole('link', { name: /^We said, it was:/ }).click();
  await expect(page.getByText('This car alone.')).toBeVisible();
  await expect(page.getByText('Front pads').first()).toBeVisible();
  await expect(page.getByText('Other pads')).toHaveCount(0);
  await page.getByRole('link', { name: 'All cars of the garage' }).click();
  await expect(page.getByText('Of all 2 cars.')).toBeVisible();
  await expect(page.getByText('Other pads').first()).toBeVisible();
});

test('a garage of which nothing was said says so, and cars come four at a time', async ({
  page,
  garage,
}) => {
  await page.goto(`${garage.home()}/said`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'No date that was said has an outcome yet.',
  );
  await expect(page.getByRole('heading', { name: 'Nothing was said yet' })).toBeVisible();
  for (const name of ['Ash', 'Birch', 'Cedar', 'Dogwood']) {
    const car = await garage.another(name);
    await car.watch({ ...PADS, name: `${name} pads` });
    await car.write(session('2025-03-20'));
    await car.counted();
  }
  await page.reload();
  await expect(page.getByText('So far of 4 of 5 cars; more below.')).toBeVisible();
  await page.getByRole('button', { name: 'Work out more cars' }).click();
  await expect(page.getByText('Of all 5 cars.')).toBeVisible();
  for (const name of ['Ash', 'Birch', 'Cedar', 'Dogwood'])
    await expect(page.getByText(`${name} pads`).first()).toBeAttached();
  await page.goto(`${garage.home()}/said?car=0190a1b2-c3d4-7e5f-8a9b-000000000000`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    /There is nothing at this address/,
  );
});
