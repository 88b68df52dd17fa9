import { expect } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { test } from '../../support/browser/garage-test.ts';
import { goTo } from '../../support/browser/go-to.ts';

const mm = (text: string) => ({ text, unit: 'mm' as const });

test('a tyre set that moves between two cars keeps its sessions and the history of its tread', async ({
  page,
  garage,
}) => {
  const other = await garage.another('Ossery Pell');
  const set = await garage.keep({
    kind: 'component',
    sort: 'tyreSet',
    name: 'Circuit set 2',
    condition: 'new',
    since: '2026-05-01',
    dateCode: '0326',
    leastDepth: mm('3'),
  });
  const measured = (on: string, front: string) => ({
    kind: 'measure' as const,
    component: set,
    on,
    tread: [
      { corner: 'frontLeft' as const, groove: 'inner', depth: mm(front) },
      { corner: 'frontLeft' as const, groove: 'outer', depth: mm('5.9') },
    ],
  });
  await garage.write({ kind: 'fit', component: set, change: 'on', on: '2026-05-02' });
  await garage.write({ kind: 'session', use: 'circuit', sessions: 4, on: '2026-05-09' });
  await garage.write(measured('2026-05-10', '5.2'));
  await garage.write({ kind: 'fit', component: set, change: 'off', on: '2026-05-20' });
  await garage.write({ kind: 'session', use: 'circuit', sessions: 9, on: '2026-05-23' });
  await other.write({ kind: 'fit', component: set, change: 'on', on: '2026-05-30' });
  await other.write({ kind: 'session', use: 'circuit', sessions: 3, on: '2026-06-06' });
  await other.write(measured('2026-06-07', '2.8'));

  await page.goto(garage.home());
  await goTo(page, 'Sets, tools and people');
  await expect(page.getByText(/^On Ossery Pell since 30 May 2026, 3 sessions/)).toBeVisible();
  await expectAccessible(page, 'sets, tools and people');
  await page.getByRole('link', { name: 'Circuit set 2' }).click();
  // 4 on the first car and 3 on the second; the 9 were driven while it was on neither
  await expect(page.getByRole('region', { name: 'What it has behind it' })).toContainText(
    '7 sessions',
  );
  await expect(page.getByText(/Below your own least, 3 mm\./)).toBeVisible();
  const been = page.getByRole('region', { name: 'Where it has been' });
  await expect(been).toContainText('Ossery Pell: since 30 May 2026');
  await expect(been).toContainText('Tarnfell Corvo: 2 May 2026 to 20 May 2026');
  const table = page.getByRole('region', { name: 'Measured' }).getByRole('table');
  await expect(
    table.getByRole('rowheader', { name: /7 June 2026, after 7 sessions/ }),
  ).toBeVisible();
  await expect(
    table.getByRole('rowheader', { name: /10 May 2026, after 4 sessions/ }),
  ).toBeVisible();
  await expect(table.getByRole('cell', { name: '2.8 mm' })).toBeVisible();
  await expect(table.getByRole('cell', { name: '5.2 mm' })).toBeVisible();
  const entries = page.getByRole('region', { name: 'Its entries' });
  await expect(entries.getByRole('listitem')).toHaveCount(5);
  await expectAccessible(page, 'a tyre set');
});

test('a set that is on a car is told where it is when it is fitted again, and is taken off there', async ({
  page,
  garage,
}) => {
  const other = await garage.another('Ossery Pell');
  const set = await garage.keep({
    kind: 'component',
    sort: 'tyreSet',
    name: 'Road set',
    condition: 'used',
  });
  await garage.write({ kind: 'fit', component: set, change: 'on', on: '2026-06-01' });
  const twice = await other.attempt({
    kind: 'fit',
    component: set,
    change: 'on',
    on: '2026-06-10',
  });
  expect(twice).toMatchObject({ refusal: { code: 'alreadyFitted' } });
  expect(JSON.stringify(twice)).toMatch(/Tarnfell Corvo since 1 June 2026/);

  await page.goto(`${garage.home()}/gear/${set}`);
  await expect(page.getByText(/^On Tarnfell Corvo since 1 June 2026/)).toBeVisible();
  await expect(page.getByRole('link', { name: 'Fit to a car' })).toHaveCount(0);
  await expect(page.getByRole('link', { name: 'Take off' })).toHaveAttribute(
    'href',
    `${garage.record('fit')}?component=${set}&change=off`,
  );
  await page.getByRole('link', { name: 'Change', exact: true }).click();
  await expect(page.getByRole('button', { name: 'Remove it' })).toHaveAccessibleDescription(
    /It is on Tarnfell Corvo; take it off there first/,
  );

  await garage.write({ kind: 'fit', component: set, change: 'off', on: '2026-06-12' });
  await page.goto(`${garage.home()}/gear/${set}`);
  await expect(page.getByText(/^On no car since 12 June 2026/)).toBeVisible();
  await page.getByRole('link', { name: 'Fit to a car' }).click();
  await expect(page.getByRole('link', { name: 'Ossery Pell' })).toHaveAttribute(
    'href',
    `${other.record('fit')}?component=${set}`,
  );
  await expectAccessible(page, 'which car a part goes on');
});

test('new pads are added, and are shown as new and not bedded once they are on', async ({
  page,
  garage,
}) => {
  await page.goto(`${garage.home()}/gear`);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('No set, tool or person yet');
  await page.getByRole('link', { name: /^Add ?: sets and parts$/ }).click();
  await page.getByLabel('Name').fill('Front pads, track');
  await page.getByLabel('Sort').selectOption({ label: 'Brake pads' });
  await page.getByRole('textbox', { name: 'Your own least thickness' }).fill('4');
  await page.getByRole('checkbox', { name: /Pads, look and measure/ }).click();
  await expectAccessible(page, 'add a part');
  await page.getByRole('button', { name: 'Add it' }).click();
  await page.waitForURL(/\/gear\/[\da-f-]{36}$/);
  await expect(page.getByText('New, not bedded yet')).toBeVisible();
  const gearId = page.url().split('/').at(-1) ?? '';
  await garage.write({ kind: 'fit', component: gearId, change: 'on', positions: ['front'] });

  await page.goto(`${garage.home()}/gear`);
  await expect(page.getByRole('heading', { level: 1 })).toContainText(
    'One needs a hand: Front pads, track',
  );
  const row = page.getByRole('listitem').filter({ hasText: 'Front pads, track' });
  await expect(row.getByText('New, not bedded yet')).toBeVisible();
  expect((await garage.piece(gearId)).row).toMatchObject({
    gear: { sort: 'pads', condition: 'new', leastDepth: { text: '4', unit: 'mm' } },
    items: [{ item: { role: 'pads', source: 'common practice, no source' } }],
    life: { bedding: 'notBedded' },
  });
});

test('a torque wrench falls due by the calendar and is done without a car; it can be undone', async ({
  page,
  garage,
}) => {
  await page.goto(`${garage.home()}/gear/add?kind=equipment`);
  await page.getByLabel('Name').fill('Torque wrench');
  await page.getByLabel('Sort').selectOption({ label: 'Torque wrench' });
  await page.getByRole('checkbox', { name: /calibration/ }).click();
  await page.getByLabel(/calibration: last done on/).fill('2025-05-02');
  await page.getByRole('button', { name: 'Add it' }).click();
  await page.waitForURL(/\/gear\/[\da-f-]{36}$/);
  // 2 May 2025 plus 12 months
  const heading = page.getByRole('heading', { level: 1 });
  await expect(heading).toHaveText('Torque wrench: calibration overdue since 2 May 2026.');
  const items = page.getByRole('region', { name: 'Items' });
  await items.getByRole('button', { name: /^Why: / }).click();
  await expect(items).toContainText('Source: ISO 6789');
  await expectAccessible(page, 'a torque wrench, with its why');

  await page.getByRole('link', { name: 'Record service done' }).click();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Tick at least one item that was done.').first()).toBeVisible();
  await expectAccessible(page, 'service done, with an error');
  await page.getByRole('checkbox', { name: /calibration/ }).click();
  await page.getByRole('button', { name: 'Save' }).click();
  await page.waitForURL(/\/gear\/[\da-f-]{36}$/);
  await expect(heading).toHaveText('Torque wrench: calibration good until 15 June 2027.');
  // the newest stands first; the one below takes back that it was added
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await expect(heading).toHaveText('Torque wrench: calibration overdue since 2 May 2026.');
});

test('a helmet falls due by the date on its label, asked for when it is ticked', async ({
  page,
  garage,
}) => {
  await page.goto(`${garage.home()}/gear/add?kind=person`);
  await page.getByLabel('Name').fill('Ada');
  await page.getByRole('checkbox', { name: /^Helmet/ }).click();
  await page.getByRole('button', { name: 'Add it' }).click();
  await expect(page.getByLabel('Helmet: the label says')).toHaveAccessibleDescription(
    /Give the date the label says/,
  );
  await page.reload();
  await page.getByLabel('Helmet: the label says').fill('2026-07-01');
  await page.getByRole('button', { name: 'Add it' }).click();
  await page.waitForURL(/\/gear\/[\da-f-]{36}$/);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Ada: helmet due by 1 July 2026.',
  );
  await page.goto(`${garage.home()}/gear`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'One needs a hand: Ada (helmet due by 1 July 2026).',
  );
});

test('a tool is changed, changed back, removed, and added again with its items', async ({
  page,
  garage,
}) => {
  const jack = await garage.keep({ kind: 'equipment', sort: 'jack', name: 'Trolley jack' }, [
    { name: 'Jack, inspection', limits: [{ measure: 'months', value: 6 }] },
  ]);
  await page.goto(`${garage.home()}/gear/${jack}`);
  await page.getByRole('link', { name: 'Change', exact: true }).click();
  await page.getByLabel('Name').fill('Low jack');
  await page.getByRole('button', { name: 'Save the change' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Low jack');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Trolley jack');

  await page.getByRole('link', { name: /^Say when/ }).click();
  await page.getByRole('radio', { name: 'Done on a day I know' }).click();
  await page.getByLabel('Done on', { exact: true }).fill('2026-06-01');
  await page.getByRole('button', { name: 'Save the item' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('1 December 2026');

  await page.getByRole('link', { name: 'Change', exact: true }).click();
  await page.getByRole('button', { name: 'Remove it' }).click();
  await page.waitForURL(/\/gear$/);
  await expect(page.getByText('Trolley jack is no longer on the list.')).toBeVisible();
  await page.getByRole('button', { name: 'Add it again' }).click();
  await expect(page.getByText('Added again as a new one.')).toBeVisible();
  const row = page.getByRole('listitem').filter({ hasText: 'Trolley jack' });
  await expect(row).toContainText('1 December 2026');
});

test('a finding on a tool and the pads on the shelf are written down without a car', async ({
  page,
  garage,
}) => {
  const jack = await garage.keep({ kind: 'equipment', sort: 'jack', name: 'Trolley jack' });
  await page.goto(`${garage.home()}/gear/${jack}`);
  await page.getByRole('link', { name: 'Something is not right' }).click();
  await page.getByLabel('What you found').fill('Seal weeps');
  await page.getByRole('radio', { name: /^Before hard use/ }).click();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.waitForURL(new RegExp(`/gear/${jack}$`));
  await expect(page.getByText(/Seal weeps, before hard use/).first()).toBeVisible();
  await goTo(page, 'Findings');
  await expect(page.getByRole('main')).toContainText('Trolley jack');

  const pads = await garage.keep({
    kind: 'component',
    sort: 'pads',
    name: 'Spare pads',
    condition: 'used',
  });
  await page.goto(`${garage.home()}/gear/${pads}`);
  await page.getByRole('link', { name: 'Measure', exact: true }).click();
  const frontLeft = page.getByRole('group', { name: 'Front left' });
  await frontLeft.getByRole('textbox', { name: 'Inner' }).fill('6,5');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.waitForURL(new RegExp(`/gear/${pads}$`));
  await expect(page.getByRole('region', { name: 'Measured' })).toContainText('6.5 mm');
});
