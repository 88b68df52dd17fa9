import { expect } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { unfold } from '../../support/browser/forms.ts';
import { test } from '../../support/browser/garage-test.ts';

test('a car is added with its unit, digits and first reading, and stands in the garage', async ({
  page,
  garage,
}) => {
  await page.goto(garage.home());
  await page.getByRole('link', { name: 'Add a car' }).click();
  await page.getByLabel('Name').fill('Ossery Pell');
  await page.getByRole('radio', { name: 'miles' }).click();
  await page.getByLabel('What it shows now').fill('98,765');
  await page.getByLabel(/Digits before/).selectOption('5');
  await unfold(page, 'Engine, oil, wheels');
  await page.getByLabel('Oil between MIN and MAX').fill('1,4');
  await page.getByRole('button', { name: 'Add the car' }).click();
  await page.waitForURL(/\/car\/[\da-f-]{36}\/begin$/);
  await page.goto(garage.home());
  const row = page.getByRole('listitem').filter({ hasText: 'Ossery Pell' });
  await expect(row.getByText('98,765 mi')).toBeVisible();
  await expect(row.getByText('Nothing is watched yet.')).toBeVisible();
});

test('a car without a name is not added: the field says so, and a reload keeps the rest', async ({
  page,
  garage,
}) => {
  await page.goto(`${garage.home()}/car/add`);
  await page.getByLabel('What it shows now').fill('12,x50');
  await page.getByRole('button', { name: 'Add the car' }).click();
  await expect(page.getByLabel('Name')).toHaveAccessibleDescription(/Fill in a name/);
  await expect(page.getByLabel('Name')).toBeFocused();
  await expectAccessible(page, 'add a car with an error');
  await page.reload();
  await expect(page.getByLabel('What it shows now')).toHaveValue('12,x50');

  await page.getByLabel('Name').fill('Ossery Pell');
  await page.getByRole('button', { name: 'Add the car' }).click();
  await expect(page.getByLabel('What it shows now')).toHaveAccessibleDescription(
    /12,x50.*not a number/,
  );
});
