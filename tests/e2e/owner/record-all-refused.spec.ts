import { expect, type Page } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { pressSave, unfold } from '../../support/browser/forms.ts';
import { test } from '../../support/browser/garage-test.ts';

type Bad = {
  kind: string;
  fill: (page: Page) => Promise<unknown>;
  /** the field that is wrong, and what stands beside it */
  at: (page: Page) => ReturnType<Page['getByRole']>;
  says: RegExp;
};

const box = (page: Page, name: string | RegExp) => page.getByRole('textbox', { name });

const BAD: readonly Bad[] = [
  {
    kind: 'wheels',
    fill: (page) => box(page, /^Torque/).fill('tight'),
    at: (page) => box(page, /^Torque/),
    says: /"tight" is not a number/,
  },
  {
    kind: 'finding',
    fill: (page) => page.getByRole('radio', { name: /^Cosmetic/ }).click(),
    at: (page) => box(page, 'What you found'),
    says: /Say what was found/,
  },
  {
    kind: 'incident',
    fill: (page) => box(page, /^In a few words/).fill('x'.repeat(201)),
    at: (page) => page.getByRole('radiogroup', { name: 'What happened' }),
    says: /Choose what happened/,
  },
  {
    kind: 'measure',
    fill: async (page) => {
      await page
        .locator('summary')
        .filter({ hasText: /^Tyres$/ })
        .click();
      await page
        .getByRole('group', { name: 'Rear left' })
        .getByRole('textbox', { name: 'Middle' })
        .fill('deep');
    },
    at: (page) =>
      page.getByRole('group', { name: 'Rear left' }).getByRole('textbox', { name: 'Middle' }),
    says: /"deep" is not a number/,
  },
  {
    kind: 'layUp',
    fill: (page) => page.getByLabel(/^Planned until/).fill('2026-06-01'),
    at: (page) => page.getByLabel(/^Planned until/) as ReturnType<Page['getByRole']>,
    says: /before the first day/,
  },
  {
    kind: 'labReport',
    fill: (page) => box(page, 'Figure').fill('12'),
    at: (page) => box(page, 'What'),
    says: /Write what the figure is of/,
  },
  {
    kind: 'inspection',
    fill: async (page) => {
      await unfold(page, 'By whom, label, noise');
      await box(page, /^Noise/).fill('loud');
    },
    at: (page) => box(page, /^Noise/),
    says: /"loud" is not a number/,
  },
  {
    kind: 'meterReplaced',
    fill: (page) => box(page, /^The old one/).fill('5'),
    at: (page) => box(page, 'The new one shows first'),
    says: /Write what the new one shows first/,
  },
  {
    kind: 'fluid',
    fill: (page) => box(page, /^Added/).fill('-1'),
    at: (page) => box(page, /^Added/),
    says: /-1 is outside/,
  },
];

for (const { kind, fill, at, says } of BAD)
  test(`bad input in the form ${kind} is refused beside its field`, async ({ page, garage }) => {
    await page.goto(garage.record(kind));
    await fill(page);
    await pressSave(page);
    await expect(at(page)).toHaveAccessibleDescription(says);
    await expectAccessible(page, `a refused ${kind}`);
    expect(await garage.log()).toEqual([]);
  });

test('a measurement without a reading, and an answer to nothing, are refused in words', async ({
  page,
  garage,
}) => {
  await page.goto(garage.record('measure'));
  await pressSave(page);
  await expect(page.getByText(/Write at least one reading/).first()).toBeVisible();
  await page.goto(garage.record('answer'));
  await expect(page.getByText(/Open this from the finding/).first()).toBeVisible();
  expect(await garage.log()).toEqual([]);
});
