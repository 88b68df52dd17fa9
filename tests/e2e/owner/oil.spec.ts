import { randomUUID } from 'node:crypto';
import { expect } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { OwnGarage, TODAY, test } from '../../support/browser/garage-test.ts';

const km = (text: number) => ({ text: String(text), unit: 'km' as const });
const litres = (text: string) => ({ text, unit: 'l' as const });

/** A look at the stick, in quarters as the zones give it. */
const look = (on: string, odometer: number, fraction: number) => ({
  kind: 'oilCheck' as const,
  on,
  odometer: km(odometer),
  level: { how: 'fraction' as const, fraction, step: 0.25 },
});
const bottle = (on: string, odometer: number, volume: string) => ({
  kind: 'oilTopUp' as const,
  on,
  odometer: km(odometer),
  volume: litres(volume),
});

test('twelve plain entries give a level and a rate, with what they rest on', async ({
  page,
  garage,
}) => {
  await page.goto(`${garage.car()}/oil`);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Too few readings yet');
  await garage.write({
    kind: 'oilChange',
    on: '2026-02-01',
    odometer: km(40_000),
    filterRenewed: true,
  });
  await garage.write(look('2026-02-15', 40_700, 1));
  await garage.write(look('2026-03-01', 41_400, 0.75));
  await garage.write(look('2026-03-15', 42_100, 0.5));
  await garage.write(bottle('2026-03-15', 42_100, '0.5'));
  await garage.write(look('2026-04-01', 42_900, 0.75));
  await garage.write({ kind: 'session', use: 'circuit', sessions: 4, on: '2026-04-12' });
  await garage.write(look('2026-04-19', 43_800, 0.25));
  await garage.write(bottle('2026-04-19', 43_800, '0.75'));
  await garage.write(look('2026-05-10', 44_700, 0.75));
  await garage.write(look('2026-05-31', 45_600, 0.5));
  await garage.write(look('2026-06-14', 46_200, 0.25));
  const { analysis } = await garage.counted();
  expect(analysis?.oil.status).toBe('ok');
  await page.reload();
  // between two looks a quarter was used in about 700 km: some 0.35 L of 1.2 L in 1,000 km
  await expect(page.getByRole('heading', { level: 1 })).toContainText(/^Likely /);
  await expect(page.getByText(/Uses about 0\.[3-5]\d? L per 1,000 km on the road/)).toBeVisible();
  await expect(page.getByText(/Look again within/)).toBeVisible();
  await expect(page.getByText('A session is missing')).toBeHidden();
  await expectAccessible(page, 'the oil of a car');
});

test('none on the stick is the first thing said of the car, whatever the log says', async ({
  page,
  garage,
}) => {
  await garage.write(look('2026-06-10', 41_000, 1));
  await garage.write(look('2026-06-12', 41_100, 1));
  await garage.counted();
  await page.goto(garage.car());
  const answer = page.getByRole('heading', { level: 1 });
  await expect(answer).not.toContainText('No oil on the stick');
  await page.goto(garage.record('oilCheck'));
  await page.getByRole('button', { name: /None on the stick/ }).click();
  await garage.logOf(3);
  await garage.counted();
  await page.goto(garage.car());
  await expect(answer).toContainText(/^No oil on the stick when last read/);
  await page.goto(garage.home());
  await expect(page.getByRole('heading', { level: 1 })).toContainText(/oil/i);
});

test('a dry sump read cold is listed and flagged, not averaged', async ({ page, garage }) => {
  const carId = randomUUID();
  const profile = { oilSpanL: 1.2, sump: 'dry', dipstick: { state: 'hotIdle' } };
  const car = { name: 'Ardvane Cold', unit: 'km', profile };
  await garage.api.mutate('car.add', garage.command({ carId, car }));
  const dry = new OwnGarage(garage.api, garage.garageId, carId, car.name);
  const hot = { state: 'hotIdle' as const };
  const cold = { state: 'cold' as const };
  await dry.write({ ...look('2026-05-01', 10_000, 0.75), condition: hot });
  await dry.write({ ...look('2026-05-20', 10_600, 0.75), condition: hot });
  await dry.write({ ...look('2026-06-01', 11_000, 0), condition: cold });
  await dry.write({ ...look('2026-06-08', 11_200, 0), condition: cold });
  const { analysis } = await dry.counted();
  expect(analysis?.oil.offProcedure).toHaveLength(2);
  expect(analysis?.oil.lowNow).toBe(false);
  await page.goto(`${dry.car()}/oil`);
  await expect(
    page.getByText(/read cold on a dry sump|otherwise than by the car/i).first(),
  ).toBeVisible();
});

test('an oil that is not what the car asks for is said while it is written, and saved all the same', async ({
  page,
  garage,
}) => {
  const carId = randomUUID();
  const car = { name: 'Ardvane Cold', unit: 'km', profile: { oilGrade: '10W-60' } };
  await garage.api.mutate('car.add', garage.command({ carId, car }));
  const asking = new OwnGarage(garage.api, garage.garageId, carId, car.name);
  await page.goto(asking.record('oilTopUp'));
  await page.getByRole('radio', { name: '0.5 L', exact: true }).click();
  await page.locator('summary').filter({ hasText: 'Which oil' }).click();
  await page.getByLabel('Grade').fill('10W-60');
  await expect(page.getByText('Not the oil this car asks for?')).toBeHidden();
  await page.getByLabel('Grade').fill('5W-40');
  // SAE J300: a 40 lies between 12.5 and 16.3 mm2/s at 100 degrees, a 60 between 21.9 and 26.1
  await expect(page.getByText('5W-40 is thinner when hot', { exact: false })).toBeVisible();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  const [written] = await asking.logOf(1);
  expect(written?.entry).toMatchObject({ kind: 'oilTopUp', grade: '5W-40' });
});

test('Oil compared says first which car got worse since last year', async ({ page, garage }) => {
  const other = await garage.another('Steady Finch');
  // a look each fortnight, 700 km apart; one uses as it did, the other thrice as much since winter
  for (const [one, rate] of [
    [garage, (at: number) => (at < 22 ? 0.1 : 0.3)],
    [other, () => 0.1],
  ] as const) {
    let level = 1;
    for (let at = 0; at < 34; at += 1) {
      const on = new Date(Date.UTC(2025, 2, 1 + at * 14)).toISOString().slice(0, 10);
      if (on > TODAY) break;
      const odometer = 40_000 + at * 700;
      level -= rate(at) * 0.7;
      await one.write({ ...look(on, odometer, Math.max(0, level)), id: randomUUID() });
      if (level < 0.45) {
        await one.write({ ...bottle(on, odometer, '0.5'), id: randomUUID() });
        level += 0.5 / 1.2;
      }
    }
    await one.counted();
  }
  await page.goto(`${garage.home()}/oil`);
  await expect(page.getByRole('heading', { level: 1 })).toContainText(garage.name);
  await expect(page.getByRole('heading', { level: 1 })).not.toContainText('Steady Finch');
  const cars = page.getByRole('main').getByRole('listitem');
  await expect(cars.first()).toContainText(garage.name);
  await expectAccessible(page, 'oil compared');
});

test('the stick is learnt from a measured bottle, and kept only when it is pressed', async ({
  page,
  garage,
}) => {
  await page.goto(`${garage.car()}/oil/stick`);
  await page.getByLabel('Between the lines of MIN and MAX').fill('20');
  await page.getByLabel('Oil above MIN', { exact: true }).fill('4');
  await page.getByLabel('The same again').first().fill('5');
  await page.getByRole('textbox', { name: 'Poured in' }).fill('0.5');
  await page.getByLabel('Oil above MIN now').fill('2');
  await expect(page.getByText(/The level did not rise/)).toBeVisible();
  await page.getByLabel('Oil above MIN now').fill('14');
  await page.getByLabel('The same again').last().fill('15');
  // 0.5 L for 10 of 20 mm: a litre from mark to mark
  await expect(page.getByRole('heading', { name: /^About 1 L between MIN and MAX/ })).toBeVisible();
  await expectAccessible(page, 'learn the stick');
  expect((await garage.view()).car.profile.oilSpanL).toBe(1.2);
  await page.getByRole('button', { name: 'Keep 1 L for this car' }).click();
  await expect(page.getByText('1 L is on record for this car.')).toBeVisible();
  expect((await garage.view()).car.profile.oilSpanL).toBe(1);
  await page.getByRole('button', { name: /^Record the 0\.5 L/ }).click();
  const [written] = await garage.logOf(1);
  expect(written?.entry).toMatchObject({
    kind: 'oilTopUp',
    levelBefore: { fraction: 0.23 },
    levelAfter: { fraction: 0.73 },
  });
});
