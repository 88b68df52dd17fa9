import { expect } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { test } from '../../support/browser/garage-test.ts';

test('the settings change zone and units, and every car is told anew in them', async ({
  page,
  garage,
}) => {
  await garage.write({ kind: 'oilCheck', level: { how: 'fraction', fraction: 0.25 } });
  await garage.write({ kind: 'oilTopUp', volume: { text: '1', unit: 'usQt' } });
  await garage.counted();
  await page.goto(garage.home());
  // 1 US liquid quart = 0.946352946 L (NIST Handbook 44, appendix C)
  await expect(page.getByText('0.95 L added since')).toBeVisible();

  await page.goto(`${garage.home()}/settings`);
  await page.getByLabel('Time zone').fill('Pacific/Auckland');
  await page.getByLabel('Volumes in').selectOption('usQt');
  await page.getByRole('button', { name: 'Save the garage' }).click();
  await expect(page.getByText('Saved.')).toBeVisible();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Pacific/Auckland');

  await page.goto(garage.home());
  await expect(page.getByText('1 US qt added since')).toBeVisible();
  await expect(page.getByText(/, Pacific\/Auckland/)).toBeVisible();
});

test('a zone that does not exist is refused beside its field, and what was typed stays', async ({
  page,
  garage,
}) => {
  await page.goto(`${garage.home()}/settings`);
  await page.getByLabel('Name of the garage').fill('The High Barn');
  await page.getByLabel('Time zone').fill('Europe/Nowhere');
  await page.getByRole('button', { name: 'Save the garage' }).click();
  await expect(page.getByLabel('Time zone')).toHaveAccessibleDescription(
    /Europe\/Nowhere.*Europe\/London/,
  );
  await expectAccessible(page, 'settings with an error');
  await page.reload();
  await expect(page.getByLabel('Name of the garage')).toHaveValue('The High Barn');
  await expect(page.getByLabel('Time zone')).toHaveValue('Europe/Nowhere');
});
