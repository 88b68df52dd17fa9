import { expect } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { test } from '../../support/browser/garage-test.ts';
import { goTo } from '../../support/browser/go-to.ts';

test('the findings of all cars stand in one list, what forbids driving first', async ({
  page,
  garage,
}) => {
  const other = await garage.another('Ossery Pell');
  await garage.write({ kind: 'finding', what: 'Wiper streaks', severity: 'watch' });
  await other.write({
    kind: 'finding',
    what: 'Brake hose cracked',
    where: 'rearLeft',
    severity: 'doNotDrive',
    dueBy: '2026-06-20',
    on: '2026-06-10',
  });
  await page.goto(garage.home());
  await goTo(page, 'Findings');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'One finding forbids driving: Brake hose cracked (Ossery Pell).',
  );
  await expect(page.getByRole('heading', { level: 3 })).toHaveText([
    'Brake hose cracked',
    'Wiper streaks',
  ]);
  const worst = page.getByRole('region', { name: 'Do not drive' });
  await expect(worst).toContainText('rear left, since 10 June 2026, to be done by 20 June 2026');
  await expectAccessible(page, 'findings');
  await worst.getByRole('link', { name: /^Answered/ }).click();
  await page.waitForURL(new RegExp(`/record/${other.carId}/answer\\?notice=`));
});

test('what is answered leaves the list at once, on an open page too', async ({ page, garage }) => {
  const { id } = await garage.write({
    kind: 'finding',
    what: 'Brake hose cracked',
    severity: 'doNotDrive',
  });
  await page.goto(`${garage.home()}/findings`);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('One finding forbids');
  await garage.write({ kind: 'answer', notice: id, answer: 'Hose renewed' });
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('No finding is open.');
});

test('a car’s page tells first what forbids driving, with what is to be looked over', async ({
  page,
  garage,
}) => {
  await garage.write({ kind: 'incident', what: 'softPedal', on: '2026-06-14' });
  await garage.write({ kind: 'wheels', change: 'off', which: ['frontLeft', 'frontRight'] });
  await garage.write({ kind: 'finding', what: 'Wiper streaks', severity: 'watch' });
  await garage.counted();
  await page.goto(garage.car());
  await expect(page.getByRole('heading', { level: 1 })).toContainText(
    'Soft brake pedal on 14 June 2026, not looked over yet.',
  );
  const way = page.getByRole('region', { name: 'What stands in the way' });
  await expect(way.getByText('To be looked over before it is driven:')).toBeVisible();
  await expect(way.getByText('Wheels not torqued')).toBeVisible();
  await expect(way.getByRole('heading', { level: 3 })).toHaveText([
    'Soft brake pedal',
    'Wiper streaks',
  ]);
  await expectAccessible(page, 'a car with what stands in the way');
});

test('the sets and parts on a car are told on its page and lead to their own', async ({
  page,
  garage,
}) => {
  const set = await garage.keep({
    kind: 'component',
    sort: 'pads',
    name: 'Front pads, hard',
    condition: 'new',
  });
  await garage.write({ kind: 'fit', component: set, change: 'on', on: '2026-06-01' });
  await garage.counted();
  await page.goto(garage.car());
  const fitted = page.getByRole('region', { name: 'Fitted now' });
  await fitted.getByRole('link', { name: 'Front pads, hard' }).click();
  await page.waitForURL(new RegExp(`/gear/${set}$`));
});

test('a finding on a tool is answered where it stands, with a way back', async ({
  page,
  garage,
}) => {
  const lift = await garage.keep({ kind: 'equipment', sort: 'lift', name: 'Four-post lift' });
  const entry = {
    ...garage.entry({ kind: 'finding', what: 'Cable frays', severity: 'beforeHardUse' }),
    car: undefined,
    gear: lift,
  };
  await garage.api.mutate('entry.record', garage.command({ entry }));
  await page.goto(`${garage.home()}/findings`);
  await page.getByRole('button', { name: 'Answered: Cable frays' }).click();
  await page.getByRole('button', { name: 'Save the answer' }).click();
  await expect(page.getByText('Say what was done about it.')).toBeVisible();
  await page.getByLabel('What was done about it?').fill('Cable renewed');
  await expectAccessible(page, 'answering a finding on a tool');
  await page.getByRole('button', { name: 'Save the answer' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('No finding is open.');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('heading', { level: 3 })).toHaveText('Cable frays');
});
