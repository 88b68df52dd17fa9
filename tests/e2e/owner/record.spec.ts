import { expect } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { expectSaved, save } from '../../support/browser/forms.ts';
import { BRAKE_FLUID, ENGINE_OIL, TODAY, test } from '../../support/browser/garage-test.ts';
import { Taps } from '../../support/browser/taps.ts';

test('an oil check is saved by one tap on its mark, at most three from the garage, and can be undone', async ({
  page,
  garage,
}) => {
  await garage.counted();
  await page.goto(garage.home());
  const taps = new Taps();
  await taps.on(page.getByRole('main').getByRole('link', { name: 'What happened' }));
  await taps.on(page.getByRole('main').getByRole('link', { name: /^Oil check/ }));
  await taps.on(page.getByRole('button', { name: /^Half/ }));
  await expectSaved(page);
  expect(taps.count).toBe(3);
  const [checked] = await garage.logOf(1);
  expect(checked?.entry).toMatchObject({
    kind: 'oilCheck',
    on: TODAY,
    zone: 'Europe/London',
    level: { how: 'fraction', fraction: 0.5 },
  });
  await expect(page.getByText(/Oil on the stick: .*half/)).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('Undone.')).toBeVisible();
  expect(await garage.log()).toEqual([]);
  const all = await garage.log({ removed: true });
  expect(all.map(({ removed }) => removed)).toEqual([true]);
});

test('each of the seven zones of the stick is recorded as what it says', async ({
  page,
  garage,
}) => {
  const zones = [
    [/^None on the stick/, { how: 'none' }],
    [/^MIN/, { fraction: 0 }],
    [/^(A )?quarter/i, { fraction: 0.25 }],
    [/^Half/, { fraction: 0.5 }],
    [/^Three quarters/, { fraction: 0.75 }],
    [/^MAX/, { fraction: 1 }],
    [/^Over MAX/, { how: 'over' }],
  ] as const;
  for (const [name, level] of zones) {
    await page.goto(garage.record('oilCheck'));
    await page.getByRole('button', { name }).click();
    await expectSaved(page);
    const [newest] = await garage.log();
    expect(newest?.entry, String(name)).toMatchObject({ level });
  }
  expect(await garage.log()).toHaveLength(zones.length);
});

test('oil added is a bottle, or an amount exactly as typed', async ({ page, garage }) => {
  await page.goto(garage.record('oilTopUp'));
  await page.getByRole('radio', { name: '0.5 L' }).click();
  await save(page);
  await page.goto(garage.record('oilTopUp'));
  await page.getByLabel(/amount/i).first().fill('0,30');
  await save(page);
  const log = await garage.logOf(2);
  expect(log.map(({ entry }) => entry)).toMatchObject([
    { kind: 'oilTopUp', volume: { text: '0,30', unit: 'l' } },
    { kind: 'oilTopUp', volume: { text: '0.5', unit: 'l' } },
  ]);
});

test('a session is the same as the last one, with its number stepped', async ({ page, garage }) => {
  await garage.watch(BRAKE_FLUID);
  await garage.write({
    kind: 'session',
    use: 'circuit',
    sessions: 4,
    venue: 'Ostrel Loop',
    on: '2026-05-30',
  });
  await garage.counted();
  await page.goto(garage.record('session'));
  await page.getByRole('button', { name: /same as last/i }).click();
  await page.getByRole('button', { name: /^More: .*sessions/i }).click();
  await save(page);
  const [newest] = await garage.logOf(2);
  expect(newest?.entry).toMatchObject({
    kind: 'session',
    use: 'circuit',
    sessions: 5,
    venue: 'Ostrel Loop',
    on: TODAY,
  });
  // 18 - 4 = 14, less 5 more = 9
  await expect(page.getByText('Brake fluid: 14 → 9 sessions left.')).toBeVisible();
});

test('a day at the drag strip is its passes', async ({ page, garage }) => {
  await page.goto(garage.record('strip'));
  await page.getByLabel(/^Passes/).fill('6');
  await save(page);
  const [day] = await garage.logOf(1);
  expect(day?.entry).toMatchObject({ kind: 'strip', passes: Array(6).fill({}) });
});

test('fuel, a drive and a note are kept as typed', async ({ page, garage }) => {
  await page.goto(garage.record('fuel'));
  await page.getByLabel(/^(Volume|Fuel|Amount)/).first().fill('41,20');
  await page.getByLabel(/^Odometer/).first().fill('41 350');
  await save(page);
  await page.goto(garage.record('drive'));
  await page.getByLabel(/^Distance/).first().fill('120.5');
  await save(page);
  await page.goto(garage.record('note'));
  await page.getByLabel(/^(Note|What)/).first().fill('Rattle from the left, cold only.');
  await save(page);
  const log = await garage.logOf(3);
  expect(log.map(({ entry }) => entry)).toMatchObject([
    { kind: 'note', note: 'Rattle from the left, cold only.' },
    { kind: 'drive', use: 'road', distance: { text: '120.5', unit: 'km' } },
    {
      kind: 'fuel',
      volume: { text: '41,20', unit: 'l' },
      odometer: { text: '41 350', unit: 'km' },
    },
  ]);
});

test('an oil change starts engine oil anew', async ({ page, garage }) => {
  await garage.watch(ENGINE_OIL);
  await garage.write({
    kind: 'odometer',
    odometer: { text: '49000', unit: 'km' },
    on: '2026-06-10',
  });
  await garage.counted();
  await page.goto(garage.record('oilChange'));
  await page.getByLabel(/filled/i).first().fill('6.2');
  await page.getByRole('radio', { name: /renewed/i }).click();
  await save(page);
  const [change] = await garage.logOf(2);
  expect(change?.entry).toMatchObject({
    kind: 'oilChange',
    filled: { text: '6.2', unit: 'l' },
    filterRenewed: true,
  });
  await page.goto(garage.car());
  await expect(page.getByRole('region', { name: 'Items' })).toContainText('10,000 km left');
});

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
  const reading = page.getByLabel(/^(Odometer|Reading|It shows|What it shows)/).first();
  await reading.fill('4250');
  await page.getByRole('button', { name: /^Save/ }).click();
  await expect(page.getByText(/4250 km is lower than 42500 km on 10 Jun 2026/).first()).toBeVisible();
  await expect(reading).toHaveValue('4250');
  await expectAccessible(page, 'the question about an odometer');
  expect(await garage.log()).toHaveLength(2);
  await page.getByRole('button', { name: /as (it is|typed|written)|right all the same/i }).click();
  await expectSaved(page);
  const [kept] = await garage.logOf(3);
  expect(kept?.entry).toMatchObject({ odometer: { text: '4250', unit: 'km' } });
  await garage.counted();
  await page.goto(garage.car());
  await expect(page.getByRole('region', { name: 'Entries to mend' })).toContainText('4250 km');
});
