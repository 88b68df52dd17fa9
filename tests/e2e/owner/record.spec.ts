import { expect } from '@playwright/test';
import { expectSaved, openCautions, save, unfold } from '../../support/browser/forms.ts';
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
  await taps.on(page.getByRole('button', { name: 'Half', exact: true }));
  await expectSaved(page);
  expect(taps.count).toBe(3);
  const [checked] = await garage.logOf(1);
  expect(checked?.entry).toMatchObject({
    kind: 'oilCheck',
    on: TODAY,
    zone: 'Europe/London',
    level: { how: 'fraction', fraction: 0.5 },
  });
  await expect(page.getByText(/Oil on the stick: not on record → half/)).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('Undone.')).toBeVisible();
  expect(await garage.log()).toEqual([]);
  const all = await garage.log({ removed: true });
  expect(all.map(({ removed }) => removed)).toEqual([true]);
});

test('each of the seven marks of the stick is recorded as what it says', async ({
  page,
  garage,
}) => {
  const zones = [
    ['None on the stick', { how: 'none' }],
    ['MIN', { how: 'fraction', fraction: 0 }],
    ['A quarter', { how: 'fraction', fraction: 0.25 }],
    ['Half', { how: 'fraction', fraction: 0.5 }],
    ['Three quarters', { how: 'fraction', fraction: 0.75 }],
    ['MAX', { how: 'fraction', fraction: 1 }],
    ['Over MAX', { how: 'over' }],
  ] as const;
  for (const [name, level] of zones) {
    await page.goto(garage.record('oilCheck'));
    await page.getByRole('button', { name, exact: true }).click();
    await expectSaved(page);
    const [newest] = await garage.log();
    expect(newest?.entry, name).toMatchObject({ kind: 'oilCheck', level });
  }
  expect(await garage.log()).toHaveLength(zones.length);
});

test('oil added is a bottle, or an amount exactly as typed', async ({ page, garage }) => {
  await page.goto(garage.record('oilTopUp'));
  await page.getByRole('radio', { name: '1 US qt' }).click();
  await save(page);
  await page.goto(garage.record('oilTopUp'));
  await page.getByRole('textbox', { name: 'Amount' }).fill('0,30');
  await page.getByLabel('Unit: Amount').selectOption('l');
  await save(page);
  const log = await garage.logOf(2);
  expect(log.map(({ entry }) => entry)).toMatchObject([
    { kind: 'oilTopUp', volume: { text: '0,30', unit: 'l' } },
    { kind: 'oilTopUp', volume: { text: '1', unit: 'usQt' } },
  ]);
  await expect(page.getByRole('region', { name: 'History' })).toContainText('0,30 L');
});

test('a session is the same as the last one with its number stepped, and says what it used up', async ({
  page,
  garage,
}) => {
  await garage.watch(BRAKE_FLUID);
  await garage.write({
    kind: 'session',
    use: 'circuit',
    sessions: 4,
    venue: 'Ostrel Loop',
    on: '2026-05-30',
  });
  await garage.counted();
  await page.goto(garage.car());
  await page.getByRole('main').getByRole('link', { name: 'What happened' }).click();
  await page.getByRole('link', { name: /^Session/ }).click();
  await page.getByRole('button', { name: /^Same as last: Circuit/ }).click();
  await page.getByRole('button', { name: 'More: Sessions' }).click();
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
  await expect(
    page.getByText(/Brake fluid: in limits → due soon, .*; 9 sessions left/),
  ).toBeVisible();
});

test('a day at the drag strip is its passes', async ({ page, garage }) => {
  await page.goto(garage.record('strip'));
  await page.getByRole('textbox', { name: 'Passes' }).fill('6');
  await unfold(page, 'Pass 1');
  await page
    .getByRole('textbox', { name: /^1\/4 mile/ })
    .first()
    .fill('12.841');
  await save(page);
  const [day] = await garage.logOf(1);
  expect(day?.entry).toMatchObject({
    kind: 'strip',
    passes: [{ at4thS: 12.841 }, ...Array<object>(5).fill({})],
  });
});

test('fuel, a drive and a note are kept as typed', async ({ page, garage }) => {
  await page.goto(garage.record('fuel'));
  await page.getByRole('textbox', { name: 'Fuel' }).fill('41,20');
  await page.getByRole('textbox', { name: /^Odometer/ }).fill('41 350');
  await page.getByRole('checkbox', { name: 'Filled up' }).click();
  await save(page);
  await page.goto(garage.record('drive'));
  await page.getByRole('textbox', { name: /^Distance/ }).fill('120.5');
  await save(page);
  await page.goto(garage.record('note'));
  await page.getByRole('textbox', { name: 'Note' }).fill('Rattle from the left,\ncold only.');
  await save(page);
  const log = await garage.logOf(3);
  expect(log.map(({ entry }) => entry)).toMatchObject([
    { kind: 'note', note: 'Rattle from the left,\ncold only.' },
    { kind: 'drive', use: 'road', distance: { text: '120.5', unit: 'km' } },
    {
      kind: 'fuel',
      volume: { text: '41,20', unit: 'l' },
      odometer: { text: '41 350', unit: 'km' },
      full: true,
    },
  ]);
});

test('an oil change starts engine oil anew, and asks about the filter', async ({
  page,
  garage,
}) => {
  await garage.watch(ENGINE_OIL);
  await garage.write({
    kind: 'odometer',
    odometer: { text: '49000', unit: 'km' },
    on: '2026-06-10',
  });
  const before = await garage.counted();
  expect(before.analysis?.items[0]?.limits[0]).toMatchObject({ accrued: 8000 });
  await page.goto(garage.record('oilChange'));
  await page.getByRole('textbox', { name: /^Filled/ }).fill('6.2');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByText(/Say whether the filter was renewed/).first()).toBeVisible();
  await page.getByRole('radio', { name: 'Renewed' }).click();
  await save(page);
  const [change] = await garage.logOf(2);
  expect(change?.entry).toMatchObject({
    kind: 'oilChange',
    filled: { text: '6.2', unit: 'l' },
    filterRenewed: true,
  });
  await expect(page.getByRole('region', { name: 'Items' })).toContainText('10,000 km left');
});

test('work that is pressed at its item comes up ticked, with the cautions it asks for', async ({
  page,
  garage,
}) => {
  await garage.watch(BRAKE_FLUID);
  const engineOil = await garage.watch(ENGINE_OIL);
  const { items } = await garage.counted();
  await page.goto(garage.car());
  await page.getByRole('link', { name: /^Done now ?: Brake fluid$/ }).click();
  await expect(page.getByRole('checkbox', { name: 'Brake fluid' })).toBeChecked();
  await expect(page.getByRole('checkbox', { name: 'Engine oil' })).not.toBeChecked();
  // working under a car and on brakes: common practice, no source
  await openCautions(page);
  await expect(page.getByText(/Nobody goes under a car that a jack alone holds/)).toBeVisible();
  await expect(page.getByText(/Pump the pedal until it is firm/)).toBeVisible();
  await save(page);
  const [service] = await garage.logOf(1);
  const done = items.filter(({ id }) => id !== engineOil).map(({ id }) => id);
  expect(service?.entry).toMatchObject({ kind: 'service', items: done, on: TODAY });
});
