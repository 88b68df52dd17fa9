import { expect, type Page } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { type OwnGarage, TODAY, test } from '../../support/browser/garage-test.ts';
import {
  expectAllSent,
  keepForLater,
  openPocket,
  reopen,
  target,
} from '../../support/browser/pocket.ts';
import { Taps } from '../../support/browser/taps.ts';

test.use({ serviceWorkers: 'allow' });

/** A picture of one dot, enough for whatever reads its first bytes. */
const DOT = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);

type Journey = {
  name: string;
  /** at most, from the open page to saved */
  taps: number;
  press: (page: Page, taps: Taps) => Promise<void>;
  entry: object;
};

const JOURNEYS: readonly Journey[] = [
  {
    name: 'an oil check',
    taps: 2,
    press: async (page, taps) => {
      await taps.on(target(page, 'Oil check'));
      await taps.on(page.getByRole('button', { name: 'Half', exact: true }));
    },
    entry: { kind: 'oilCheck', level: { how: 'fraction', fraction: 0.5 } },
  },
  {
    name: 'oil added, as last time',
    taps: 2,
    press: async (page, taps) => {
      await taps.on(target(page, 'Oil added'));
      await taps.on(page.getByRole('button', { name: '0.7 L As last time' }));
    },
    entry: { kind: 'oilTopUp', volume: { text: '0.7', unit: 'l' } },
  },
  {
    name: 'a session like the last one',
    taps: 3,
    press: async (page, taps) => {
      await taps.on(target(page, 'Session done'));
      await taps.on(page.getByRole('button', { name: 'More: Laps' }));
      await taps.on(page.getByRole('button', { name: 'Save', exact: true }));
    },
    entry: {
      kind: 'session',
      use: 'autocross',
      sessions: 1,
      laps: 9,
      venue: 'Old Works',
      driver: 'Tam',
    },
  },
  {
    name: 'all four wheels torqued',
    taps: 2,
    press: async (page, taps) => {
      await taps.on(target(page, 'Wheels'));
      await taps.on(page.getByRole('button', { name: /^All four torqued/ }));
    },
    entry: { kind: 'wheels', change: 'torqued' },
  },
  {
    name: 'fuel, a litre more than last time',
    taps: 4,
    press: async (page, taps) => {
      await taps.on(target(page, 'Fuel'));
      await taps.on(page.getByRole('button', { name: 'More: Fuel' }));
      await taps.on(page.getByRole('button', { name: 'Save', exact: true }));
    },
    entry: { kind: 'fuel', volume: { text: '42.5', unit: 'l' } },
  },
  {
    name: 'a finding with a photo, a corner and how bad it is',
    taps: 5,
    press: async (page, taps) => {
      await taps.on(target(page, 'Finding'));
      await taps.on(page.getByRole('radio', { name: 'Front left' }));
      await taps.on(page.getByRole('radio', { name: 'Before hard use' }));
      const choosing = page.waitForEvent('filechooser');
      await taps.on(page.getByText(/^Photo/));
      await (await choosing).setFiles({ name: 'a.png', mimeType: 'image/png', buffer: DOT });
      await expect(page.getByText('one taken')).toBeVisible();
      await taps.on(page.getByRole('button', { name: 'Save', exact: true }));
    },
    entry: {
      kind: 'finding',
      where: 'frontLeft',
      severity: 'beforeHardUse',
      photos: [expect.stringMatching(/^[\da-f-]{36}$/)],
    },
  },
  {
    name: 'the odometer by its last three digits, over a thousand',
    taps: 3,
    press: async (page, taps) => {
      await taps.on(target(page, 'Odometer'));
      // the field has the keyboard at once
      await page.keyboard.type('120');
      await expect(page.getByText('Odometer 39,120 km: 170 km on.')).toBeVisible();
      await taps.on(page.getByRole('button', { name: 'Save', exact: true }));
    },
    entry: { kind: 'odometer', odometer: { text: '39120', unit: 'km' } },
  },
];

/** What the last ones were, to start from. */
async function lastOnes(garage: OwnGarage): Promise<number> {
  const on = '2026-06-06';
  await garage.write({ kind: 'odometer', on, odometer: { text: '38,950', unit: 'km' } });
  await garage.write({ kind: 'oilTopUp', on, volume: { text: '0.7', unit: 'l' } });
  await garage.write({ kind: 'fuel', on, volume: { text: '41,5', unit: 'l' } });
  const use = 'autocross';
  const session = { use, sessions: 4, laps: 8, venue: 'Old Works', driver: 'Tam' } as const;
  await garage.write({ kind: 'session', on, ...session });
  return 4;
}

for (const { name, taps: most, press, entry } of JOURNEYS) {
  test(`${name} is saved from a cold open in ${most} taps at most, and can be undone`, async ({
    page,
    garage,
  }) => {
    const before = await lastOnes(garage);
    await openPocket(page, garage);
    const taps = new Taps();
    await press(page, taps);
    await expect(page.getByText('Saved.', { exact: true })).toBeVisible();
    expect(taps.count).toBeLessThanOrEqual(most);
    const [newest] = await garage.logOf(before + 1);
    expect(newest?.entry).toMatchObject({ ...entry, on: TODAY, zone: 'Europe/London' });
    expect(newest?.entry.time).toMatch(/^\d\d:\d\d$/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(page.getByText('Undone.')).toBeVisible();
    await garage.logOf(before);
  });

  test(`${name} without signal is one entry once there is some, though the tab was killed`, async ({
    page,
    context,
    garage,
  }) => {
    const before = await lastOnes(garage);
    await keepForLater(page, garage);
    await context.setOffline(true);
    let now = await reopen(context, page);
    await press(now, new Taps());
    await expect(now.getByText('Saved on this phone, waits for signal.')).toBeVisible();
    await expect(now.getByRole('link', { name: '1 entry waits for signal.' })).toBeVisible();
    now = await reopen(context, now);
    await expect(now.getByRole('link', { name: '1 entry waits for signal.' })).toBeVisible();
    expect(await now.evaluate('navigator.onLine')).toBe(false);
    await context.setOffline(false);
    await expectAllSent(now);
    const log = await garage.log({ removed: true });
    expect(log).toHaveLength(before + 1);
    expect(log[0]).toMatchObject({ revision: 1, entry: { ...entry, on: TODAY } });
  });
}

test('undo of what still waits takes it out, and nobody ever hears of it', async ({
  page,
  context,
  garage,
}) => {
  await keepForLater(page, garage);
  await context.setOffline(true);
  const now = await reopen(context, page);
  await target(now, 'Oil check').click();
  await now.getByRole('button', { name: 'MAX', exact: true }).click();
  await now.getByRole('button', { name: 'Undo' }).click();
  await expect(now.getByText('Undone.')).toBeVisible();
  await expect(now.getByRole('link', { name: /waits/ })).toHaveCount(0);
  await context.setOffline(false);
  await now.reload();
  await expect(target(now, 'Oil check')).toBeVisible();
  expect(await garage.log({ removed: true })).toEqual([]);
});

test('every view of the pocket page is free of what axe finds, and fits the screen', async ({
  page,
  garage,
}) => {
  // eleven views, each looked at as a whole
  test.setTimeout(120_000);
  await lastOnes(garage);
  await openPocket(page, garage);
  await expectAccessible(page, 'pocket');
  for (const view of ['oilCheck', 'oilTopUp', 'session', 'wheels', 'fuel', 'finding', 'odometer']) {
    await page.goto(`/pocket#${view}`);
    await expect(page.getByRole('button', { name: 'Leave without saving' })).toBeVisible();
    await expectAccessible(page, view);
    const over = 'document.documentElement.scrollWidth - window.innerWidth';
    expect(await page.evaluate(over), view).toBeLessThanOrEqual(0);
  }
  for (const view of ['cars', 'waiting', 'more']) {
    await page.goto(`/pocket#${view}`);
    await expectAccessible(page, view);
  }
});
