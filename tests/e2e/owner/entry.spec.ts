import { expect } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { expectSaved, pressSave, save } from '../../support/browser/forms.ts';
import { BRAKE_FLUID, test } from '../../support/browser/garage-test.ts';

test('an entry is amended exactly as it was typed, what it said before is kept, and undo puts it back', async ({
  page,
  garage,
}) => {
  const { id } = await garage.write({
    kind: 'fuel',
    volume: { text: '41,20', unit: 'l' },
    odometer: { text: '41 350', unit: 'km' },
    price: '74,16 EUR',
  });
  await garage.counted();
  await page.goto(garage.car());
  await page.getByRole('region', { name: 'History' }).getByRole('link', { name: 'Fuel' }).click();
  await page.getByRole('link', { name: 'Amend' }).click();
  const volume = page.getByRole('textbox', { name: 'Fuel' });
  await expect(volume).toHaveValue('41,20');
  await expect(page.getByRole('textbox', { name: /^Odometer/ })).toHaveValue('41 350');
  await volume.fill('14,20');
  await save(page);
  const [amended] = await garage.log();
  expect(amended).toMatchObject({
    revision: 2,
    entry: { id, volume: { text: '14,20', unit: 'l' }, price: '74,16 EUR' },
  });

  await page.goto(`${garage.home()}/entry/${id}`);
  const said = page.getByRole('region', { name: 'What it said, and who wrote it' });
  await expect(said.getByRole('listitem')).toHaveCount(2);
  await expect(said).toContainText('Amended by Ada Quill');
  await expect(said).toContainText('41,20 L');
  await expect(said).toContainText('(changed)');

  await page.getByRole('link', { name: 'Amend' }).click();
  await page.getByRole('textbox', { name: 'Fuel' }).fill('15');
  await save(page);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('Undone.')).toBeVisible();
  const [back] = await garage.log();
  expect(back).toMatchObject({ revision: 4, entry: { volume: { text: '14,20', unit: 'l' } } });
});

test('an entry that is removed no longer counts, stays on record, and undo records it again', async ({
  page,
  garage,
}) => {
  await garage.watch({ ...BRAKE_FLUID, limits: [{ measure: 'sessions', value: 18 }] });
  const { id } = await garage.write({ kind: 'session', use: 'circuit', sessions: 4 });
  await garage.counted();
  await page.goto(garage.car());
  const items = page.getByRole('region', { name: 'Items' });
  await expect(items).toContainText('14 sessions left');
  await page.goto(`${garage.home()}/entry/${id}`);
  await page.getByRole('button', { name: 'Remove' }).click();
  await expect(page.getByText('Entry removed.')).toBeVisible();
  await expect(items).toContainText('18 sessions left');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(items).toContainText('14 sessions left');
  const all = await garage.log({ removed: true });
  expect(all.map(({ removed }) => removed)).toEqual([false, true]);

  await page.goto(`${garage.home()}/entry/${id}`);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Removed: Circuit');
  await expect(page.getByRole('link', { name: 'Amend' })).toHaveCount(0);
});

test('two people amend one entry: the second sees both versions, and decides', async ({
  page,
  garage,
}) => {
  const { id } = await garage.write({ kind: 'note', note: 'Belt squeals.' });
  const other = await page.context().newPage();
  for (const each of [page, other]) {
    await each.goto(`${garage.home()}/entry/${id}/amend`);
    await expect(each.getByRole('textbox', { name: 'Note' })).toHaveValue('Belt squeals.');
  }
  await other.getByRole('textbox', { name: 'Note' }).fill('Belt squeals when cold.');
  await save(other);

  await page.getByRole('textbox', { name: 'Note' }).fill('Belt squeals when wet.');
  await pressSave(page);
  await expect(page.getByText(/^Not saved: somebody saved another version/)).toBeVisible();
  const both = page.getByRole('table');
  await expect(both).toContainText('Belt squeals when wet.');
  await expect(both).toContainText('Belt squeals when cold.');
  await expect(page.getByRole('columnheader', { name: /Newest, by Ada Quill/ })).toBeVisible();
  await expectAccessible(page, 'both versions of an entry');
  await expect(page.getByRole('textbox', { name: 'Note' })).toHaveValue('Belt squeals when wet.');
  expect((await garage.log())[0]).toMatchObject({ revision: 2 });
  await page.getByRole('button', { name: 'Save mine over it' }).click();
  await expectSaved(page);
  expect((await garage.log())[0]).toMatchObject({
    revision: 3,
    entry: { note: 'Belt squeals when wet.' },
  });
});

test('an entry that was removed meanwhile is not revived: what was written becomes a new one', async ({
  page,
  garage,
}) => {
  const { id } = await garage.write({ kind: 'note', note: 'Belt squeals.' });
  await page.goto(`${garage.home()}/entry/${id}/amend`);
  await page.getByRole('textbox', { name: 'Note' }).fill('Belt squeals when cold.');
  await garage.api.mutate('entry.remove', garage.command({ entryId: id, baseRevision: 1 }));
  await pressSave(page);
  await expect(page.getByText('Not saved: this entry was removed meanwhile.')).toBeVisible();
  await page.getByRole('button', { name: 'Record it as a new entry' }).click();
  await expectSaved(page);
  const all = await garage.log({ removed: true });
  expect(all.map(({ removed, entry }) => [removed, entry.note])).toEqual([
    [false, 'Belt squeals when cold.'],
    [true, 'Belt squeals.'],
  ]);
});
