import { randomUUID } from 'node:crypto';
import { expect } from '@playwright/test';
import { pressSave, save, unfold } from '../../support/browser/forms.ts';
import { type OwnGarage, test } from '../../support/browser/garage-test.ts';

async function addSet(garage: OwnGarage, name: string): Promise<string> {
  const gearId = randomUUID();
  const gear = { kind: 'component', sort: 'tyreSet', name, condition: 'used' };
  await garage.api.mutate('gear.add', garage.command({ gearId, gear }));
  return gearId;
}

test('a set is fitted by its name, amended, and put back', async ({ page, garage }) => {
  const set = await addSet(garage, 'Grey wheels');
  await page.goto(`${garage.record('fit')}?component=${set}`);
  await expect(page.getByRole('combobox', { name: 'Part' })).toHaveValue(set);
  await page.getByRole('radio', { name: 'Fitted' }).click();
  await page.getByRole('checkbox', { name: 'Front axle' }).click();
  await save(page);
  const history = page.getByRole('region', { name: 'History' });
  await expect(history).toContainText(/Grey wheels/);
  const [fitted] = await garage.logOf(1);
  expect(fitted?.entry).toMatchObject({ component: set, change: 'on', positions: ['front'] });
  await page.goto(`${garage.home()}/entry/${fitted?.entry.id}/amend`);
  await page.getByRole('checkbox', { name: 'Rear axle' }).click();
  await save(page);
  const [both] = await garage.log();
  expect(both?.entry).toMatchObject({ positions: ['front', 'rear'] });
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await expect(page.getByText('Undone.')).toBeVisible();
  const [back] = await garage.log();
  expect(back?.entry).toEqual(fitted?.entry);
});

test('a set that is still on another car is recorded as moved here by one press', async ({
  page,
  garage,
}) => {
  const set = await addSet(garage, 'Grey wheels');
  const other = randomUUID();
  const car = { name: 'Ashby Merle', unit: 'km', profile: {} };
  await garage.api.mutate('car.add', garage.command({ carId: other, car }));
  const on = { kind: 'fit', component: set, change: 'on', car: other, on: '2026-06-01' } as const;
  await garage.write(on as never);
  await page.goto(`${garage.record('fit')}?component=${set}`);
  await page.getByRole('radio', { name: 'Fitted' }).click();
  await pressSave(page);
  await expect(page.getByText(/it is on Ashby Merle since 1 June 2026/)).toBeVisible();
  await page.getByRole('button', { name: 'Record it as moved here' }).click();
  await page.waitForURL(/\/car\/[\da-f-]{36}$/);
  const [moved] = await garage.logOf(1);
  expect(moved?.entry).toMatchObject({ component: set, change: 'moved', car: garage.carId });
});

test('a session keeps its set of tyres and the pressures as they were read', async ({
  page,
  garage,
}) => {
  const set = await addSet(garage, 'Grey wheels');
  await page.goto(garage.record('session'));
  await unfold(page, 'Tyres and pressures');
  await page.getByRole('combobox', { name: /^Tyre set/ }).selectOption(set);
  const cold = page.getByRole('group', { name: 'Pressures, cold' });
  await cold.getByRole('textbox', { name: 'Front left' }).fill('1,9');
  const hot = page.getByRole('group', { name: 'Pressures, hot' });
  await hot.getByRole('combobox', { name: /^Unit/ }).selectOption('psi');
  await hot.getByRole('textbox', { name: 'Rear right' }).fill('33.5');
  await save(page);
  const [session] = await garage.logOf(1);
  expect(session?.entry).toMatchObject({
    tyreSet: set,
    pressuresCold: { frontLeft: { text: '1,9', unit: 'bar' } },
    pressuresHot: { rearRight: { text: '33.5', unit: 'psi' } },
  });
});
