import { expect, type Page } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { test } from '../../support/browser/garage-test.ts';
import { goTo } from '../../support/browser/go-to.ts';

const fill = async (page: Page, values: Readonly<Record<string, string>>) => {
  for (const [name, value] of Object.entries(values))
    await page.getByRole('textbox', { name, exact: true }).fill(value);
};

test('the air of two days: density altitude, and what a time of the one would be in the other', async ({
  page,
  garage,
}) => {
  await page.goto(garage.home());
  await goTo(page, 'Air and pressures');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Type in what the barometer');
  await fill(page, { Temperature: '30', Humidity: '55', 'Air pressure': '29.53' });
  await expect(page.getByText(/That is no air pressure; it is some 1,013 hPa/)).toBeVisible();
  // the published figure for 30 °C, 1000 hPa and a dew point of 20 °C: 2,482.5 ft
  await fill(page, { 'Air pressure': '1000' });
  await expect(page.getByText(/Density altitude: 7[56]\d m/)).toBeVisible();

  await fill(page, {
    'Time, the other day': '13.2',
    'Temperature, the other day': '10',
    'Humidity, the other day': '50',
    'Air pressure, the other day': '1020',
  });
  await expect(
    page.getByText(/^13\.20 s of that day would be about 13\.5\d s today, 0\.3\d s more\.$/),
  ).toBeVisible();
  await expect(page.getByText(/not meant for boosted ones/)).toBeVisible();
  await page.getByRole('button', { name: 'Why: a time of another day' }).click();
  await expect(page.getByText(/SAE J1349/)).toBeVisible();
  await expectAccessible(page, 'air and pressures, filled in');

  // nothing typed is lost
  await page.reload();
  await expect(page.getByRole('textbox', { name: 'Temperature', exact: true })).toHaveValue('30');
  await expect(page.getByText(/Density altitude: 7[56]\d m/)).toBeVisible();
});

test('cold pressure for a wanted hot one is never below the least of the spec sheet', async ({
  page,
  garage,
}) => {
  const line = { group: 'pressures', what: 'Cold, all four', value: '2.0 bar, road' };
  await garage.api.mutate(
    'spec.change',
    garage.command({ carId: garage.carId, sheet: { lines: [line] }, baseRevision: 0 }),
  );
  await page.goto(`${garage.home()}/air`);
  // 2.2 bar at 80 °C: (220 + 101.325) x 293.15 / 353.15 - 101.325 = 165.4 kPa
  await fill(page, {
    'Wanted hot': '2,2',
    'Air in the tyre, hot': '80',
    'Air in the tyre, cold': '20',
  });
  await expect(page.getByText(/^Pump 1\.65 bar cold/)).toBeVisible();
  await expect(page.getByText(/minimum is not on record/)).toBeVisible();
  await page.getByLabel('Car (optional)').selectOption({ label: garage.name });
  await expect(page.getByText('Cold, all four: 2.0 bar, road (unverified)')).toBeVisible();
  await page.getByRole('button', { name: 'Take it as the least' }).click();
  await expect(page.getByText(/^Pump 2 bar cold, the least/)).toBeVisible();
  await expect(page.getByText(/^Pump 1\.65 bar cold/)).toHaveCount(0);
  await expect(page.getByText(/Set tyres that were bled hot back/)).toBeVisible();
});
