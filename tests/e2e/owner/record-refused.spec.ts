import { expect } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { expectSaved, pressSave, save, unfold } from '../../support/browser/forms.ts';
import { test } from '../../support/browser/garage-test.ts';

test('an odometer that runs backwards is asked about once, saved when confirmed, and marked', async ({
  page,
  garage,
}) => {
  for (const [on, text] of [
    ['2026-06-01', '42100'],
    ['2026-06-10', '42500'],
  ] as const)
    await garage.write({ kind: 'odometer', odometer: { text, unit: 'km' }, on });
  await page.goto(garage.record('odometer'));
  const reading = page.getByRole('textbox', { name: 'Odometer' });
  await reading.fill('4250');
  await pressSave(page);
  await expect(page.getByText('Not saved yet: is the odometer right?')).toBeVisible();
  await expect(page.getByText(/4250 km is lower than 42500 km on 10 Jun 2026/)).toBeVisible();
  await expect(reading).toHaveValue('4250');
  await expectAccessible(page, 'the question about an odometer');
  expect(await garage.log()).toHaveLength(2);
  await page.getByRole('button', { name: 'Save it as typed' }).click();
  await expectSaved(page);
  const [kept] = await garage.logOf(3);
  expect(kept?.entry).toMatchObject({ odometer: { text: '4250', unit: 'km' } });
  const toMend = page.getByRole('region', { name: 'Entries to mend' });
  await expect(toMend).toContainText('4250 km');
});

test('an odometer that was mended after the question is saved without another', async ({
  page,
  garage,
}) => {
  await garage.write({
    kind: 'odometer',
    odometer: { text: '42500', unit: 'km' },
    on: '2026-06-10',
  });
  await page.goto(garage.record('odometer'));
  await page.getByRole('textbox', { name: 'Odometer' }).fill('4260');
  await pressSave(page);
  await expect(page.getByText('Not saved yet: is the odometer right?')).toBeVisible();
  await page.getByRole('textbox', { name: 'Odometer' }).fill('42600');
  await save(page);
  const [kept] = await garage.logOf(2);
  expect(kept?.entry).toMatchObject({ odometer: { text: '42600', unit: 'km' } });
});

test('a date after tomorrow is refused beside its field, with today named; tomorrow is taken', async ({
  page,
  garage,
}) => {
  await page.goto(garage.record('note'));
  await page.getByRole('textbox', { name: 'Note' }).fill('Booked in.');
  await unfold(page, 'Day and time');
  const day = page.getByLabel('Day', { exact: true });
  await day.fill('2026-06-17');
  await pressSave(page);
  await expect(day).toHaveAccessibleDescription(/2026-06-17.*today is 2026-06-15/);
  await expect(page.getByRole('textbox', { name: 'Note' })).toHaveValue('Booked in.');
  expect(await garage.log()).toEqual([]);
  await expectAccessible(page, 'a date after tomorrow');
  await day.fill('2026-06-16');
  await save(page);
});

test('a volume below zero is refused beside its field, and stays as typed', async ({
  page,
  garage,
}) => {
  await page.goto(garage.record('oilTopUp'));
  const amount = page.getByRole('textbox', { name: 'Amount' });
  await amount.fill('-0.5');
  await pressSave(page);
  await expect(amount).toHaveAccessibleDescription(/-0\.5 is outside 0 to/);
  await expect(amount).toHaveValue('-0.5');
  expect(await garage.log()).toEqual([]);
});

test('a note of 65 KB is refused beside its field, and is all still there', async ({
  page,
  garage,
}) => {
  const long = 'x'.repeat(65 * 1024);
  await page.goto(garage.record('note'));
  const note = page.getByRole('textbox', { name: 'Note' });
  await note.fill(long);
  await pressSave(page);
  await expect(note).toHaveAccessibleDescription(/longer than 64 KB.*split/);
  await expect(note).toHaveValue(long);
  expect(await garage.log()).toEqual([]);
});

test('a body of 1.1 MB is refused in words, and what was typed stays', async ({ page, garage }) => {
  // no form can fill as much; something on the way adds it
  await page.route('**/api/trpc/entry.record**', async (route) => {
    const padding = 'x'.repeat(1.1 * 1024 * 1024);
    const data = JSON.stringify({ ...JSON.parse(route.request().postData() ?? ''), padding });
    await route.continue({ postData: data });
  });
  await page.goto(garage.record('note'));
  await page.getByRole('textbox', { name: 'Note' }).fill('Short enough.');
  await pressSave(page);
  await expect(page.getByRole('form', { name: 'What happened' })).toContainText(
    /larger than 1024 KB and nothing of it was saved/,
  );
  await expect(page.getByRole('textbox', { name: 'Note' })).toHaveValue('Short enough.');
  expect(await garage.log()).toEqual([]);
});

test('what was typed survives a reload, and is gone once it was saved', async ({
  page,
  garage,
}) => {
  await page.goto(garage.record('fuel'));
  await page.getByRole('textbox', { name: 'Fuel' }).fill('38,75');
  await page.getByRole('textbox', { name: /^Odometer/ }).fill('41 350');
  await page.reload();
  await expect(page.getByRole('textbox', { name: 'Fuel' })).toHaveValue('38,75');
  await expect(page.getByRole('textbox', { name: /^Odometer/ })).toHaveValue('41 350');
  await save(page);
  await page.goto(garage.record('fuel'));
  await expect(page.getByRole('textbox', { name: 'Fuel' })).toHaveValue('');
  expect(await garage.log()).toHaveLength(1);
});

test('a server whose answer is lost loses nothing: it waits on this phone, and is saved once', async ({
  page,
  garage,
}) => {
  await page.goto(garage.record('note'));
  await page.getByRole('textbox', { name: 'Note' }).fill('Written in a tunnel.');
  // the server does its part, and its answer is lost on the way back
  await page.route('**/api/trpc/entry.record**', async (route) => {
    await route.fetch();
    await route.abort('connectionreset');
  });
  await pressSave(page);
  await expect(page.getByText('Saved on this phone, waits for signal.')).toBeVisible();
  // the phone may have given up on the answer before it was lost
  await page.unrouteAll({ behavior: 'ignoreErrors' });
  // a page that is opened with signal sends what waits
  await page.goto('/pocket#waiting');
  await expect(page.getByText('Nothing waits on this phone.')).toBeVisible();
  expect((await garage.log()).map(({ revision }) => revision)).toEqual([1]);
});
