import { expect } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { expectSaved, pressSave, save, unfold } from '../../support/browser/forms.ts';
import { BRAKE_FLUID, type OwnGarage, TODAY, test } from '../../support/browser/garage-test.ts';

/** Four sessions on one day. */
const sessions = (garage: OwnGarage, time?: string) =>
  garage.write({
    kind: 'session',
    use: 'circuit',
    sessions: 4,
    ...(time === undefined ? {} : { time }),
  });

async function watched(garage: OwnGarage): Promise<void> {
  await garage.watch({ ...BRAKE_FLUID, limits: [{ measure: 'sessions', value: 18 }] });
}

for (const [time, left] of [
  ['07:00', '14 sessions left'],
  ['17:00', '18 sessions left'],
] as const)
  test(`fluid flushed at ${time} leaves ${left} of 18 on a day with four sessions at 09:00`, async ({
    page,
    garage,
  }) => {
    await watched(garage);
    await sessions(garage, '09:00');
    await garage.counted();
    await page.goto(garage.record('service'));
    await page.getByRole('checkbox', { name: 'Brake fluid' }).click();
    await unfold(page, 'Day, time and note');
    await page.getByLabel(/^Time of day/).fill(time);
    await save(page);
    await expect(page.getByRole('region', { name: 'Items' })).toContainText(left);
    const [service] = await garage.logOf(2);
    expect(service?.entry).toMatchObject({ kind: 'service', time, on: TODAY });
  });

for (const [answer, dayOrder, left] of [
  ['Before driving', 'beforeDriving', '14 sessions left'],
  ['After driving', 'afterDriving', '18 sessions left'],
] as const)
  test(`without times the form asks which came first, and "${answer}" leaves ${left}`, async ({
    page,
    garage,
  }) => {
    await watched(garage);
    await sessions(garage);
    await garage.counted();
    await page.goto(garage.record('service'));
    await page.getByRole('checkbox', { name: 'Brake fluid' }).click();
    await pressSave(page);
    await expect(page.getByText('Not saved yet: which came first?')).toBeVisible();
    await expectAccessible(page, 'the question about the order of a day');
    expect(await garage.log()).toHaveLength(1);
    await page.getByRole('button', { name: answer }).click();
    await expectSaved(page);
    await expect(page.getByRole('region', { name: 'Items' })).toContainText(left);
    const [service] = await garage.logOf(2);
    expect(service?.entry).toMatchObject({ kind: 'service', dayOrder });
  });

test('a session recorded after the work of its day is asked about as well, and may stay open', async ({
  page,
  garage,
}) => {
  await watched(garage);
  const { items } = await garage.counted();
  await garage.write({ kind: 'service', items: items.map(({ id }) => id) });
  await garage.counted();
  await page.goto(garage.record('session'));
  await pressSave(page);
  await expect(page.getByText('Not saved yet: which came first?')).toBeVisible();
  await page.getByRole('button', { name: 'Not known, save it as written' }).click();
  await expectSaved(page);
  const [session] = await garage.logOf(2);
  expect(session?.entry).not.toHaveProperty('dayOrder');
  await garage.counted();
  await page.goto(garage.car());
  await expect(
    page
      .getByRole('region', { name: 'Entries to mend' })
      .getByText(/neither has a time: the use counts as before the service/),
  ).toBeVisible();
});
