import { expect } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { test } from '../../support/browser/garage-test.ts';
import { goTo } from '../../support/browser/go-to.ts';

test('the log of the garage names each car, is narrowed by car, group and words, and survives a reload', async ({
  page,
  garage,
}) => {
  const other = await garage.another('Ossery Pell');
  await garage.write({ kind: 'note', note: 'Belt squeals when cold.', on: '2026-06-01' });
  await garage.write({
    kind: 'finding',
    what: 'Mirror loose',
    severity: 'watch',
    on: '2026-06-02',
  });
  await other.write({ kind: 'incident', what: 'overheating', on: '2026-06-03' });
  await other.write({ kind: 'fuel', volume: { text: '41,20', unit: 'l' }, on: '2026-06-04' });

  await page.goto(garage.home());
  await goTo(page, 'Log');
  const log = page.getByRole('region', { name: 'The log' });
  const rows = log.getByRole('listitem');
  await expect(rows).toHaveCount(4);
  await expect(rows.first()).toContainText('Ossery Pell');
  await expect(rows.first()).toContainText('41,20 L');
  await expect(rows.last()).toContainText(garage.name);
  await expectAccessible(page, 'the log');

  await log.getByLabel('Kind').selectOption('trouble');
  await expect(rows).toHaveCount(2);
  await log.getByLabel('Car').selectOption(garage.carId);
  await expect(rows).toHaveCount(1);
  await page.waitForURL(/kind=trouble/);
  await page.reload();
  await expect(rows).toHaveCount(1);
  await expect(rows).toContainText('Mirror loose');
  await expect(log.getByLabel('Car')).toHaveValue(garage.carId);
  await log.getByLabel('Kind').selectOption('');
  await log.getByLabel('Words in it').fill('squeals');
  await expect(rows).toHaveText([/Belt squeals when cold\./]);
});

test('two entries that look the same are settled: one is removed, with a way back', async ({
  page,
  garage,
}) => {
  await garage.write({ kind: 'session', use: 'circuit', sessions: 4 });
  const { refusal } = await garage.attempt({ kind: 'session', use: 'circuit', sessions: 4 });
  expect(refusal?.code).toBe('looksTheSame');
  await twin(garage);
  await garage.counted();
  await page.goto(garage.car());
  const mend = page.getByRole('region', { name: 'Entries to mend' });
  await mend.getByRole('button', { name: 'Remove this one' }).click();
  await expect(page.getByText('Entry removed.')).toBeVisible();
  await expect(mend).toHaveCount(0);
  expect(await garage.log()).toHaveLength(1);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(mend.getByRole('button', { name: 'Both are right' })).toBeVisible();
});

test('two entries that look the same and are both right are not asked about again', async ({
  page,
  garage,
}) => {
  await garage.write({ kind: 'session', use: 'circuit', sessions: 4 });
  await twin(garage);
  await garage.counted();
  await page.goto(garage.car());
  const mend = page.getByRole('region', { name: 'Entries to mend' });
  await mend.getByRole('button', { name: 'Both are right' }).click();
  await expect(page.getByText('Both stay, and both count.')).toBeVisible();
  await expect(mend).toHaveCount(0);
  const view = await garage.counted();
  expect(view.analysis?.flags).toEqual([]);
  // both still count, and the answer is on record
  expect((await garage.log()).map(({ entry }) => entry.kind).toSorted()).toEqual([
    'answer',
    'session',
    'session',
  ]);
  await page.reload();
  await expect(mend).toHaveCount(0);
});

/** The same session once more, as somebody insists that it happened twice. */
async function twin(garage: {
  api: { mutate: (path: string, input: unknown) => Promise<unknown> };
  command: <T extends object>(input: T) => T;
  entry: (happened: { kind: 'session'; use: 'circuit'; sessions: number }) => object;
}): Promise<void> {
  const entry = garage.entry({ kind: 'session', use: 'circuit', sessions: 4 });
  await garage.api.mutate('entry.record', garage.command({ entry, confirmed: ['looksTheSame'] }));
}
