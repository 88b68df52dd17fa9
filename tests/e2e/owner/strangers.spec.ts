import { readFileSync } from 'node:fs';
import { expect, type Page } from '@playwright/test';
import { demoCar, demoEntry } from '../../support/browser/demo.ts';
import { test } from '../../support/browser/garage-test.ts';

/** What a person is shown at an address: its status, and all the words on the page. */
async function shownAt(page: Page, address: string) {
  const answer = await page.goto(address);
  await page.getByRole('heading', { level: 1 }).waitFor();
  return { status: answer?.status(), words: await page.locator('body').ariaSnapshot() };
}

const UNKNOWN = '0197c0de-0000-7000-8000-000000000001';

test('another garage, and all that is in it, looks as if it did not exist', async ({
  page,
  garage,
}) => {
  const { url } = JSON.parse(readFileSync('test-results/demo-garage.json', 'utf8'));
  const nothing = await shownAt(page, `/g/${UNKNOWN}`);
  expect(nothing.status).toBe(404);
  expect(nothing.words).toContain('There is nothing at this address, or it is not yours to see.');
  for (const path of ['', '/settings', `/${demoCar(1)}`, `/${demoEntry(1, 9001)}`, '/record'])
    expect(await shownAt(page, `${url}${path}`), path).toEqual(nothing);

  // inside one's own garage the ids of another's records lead nowhere either
  const unknownCar = await shownAt(page, `${garage.home()}/car/${UNKNOWN}`);
  expect(unknownCar.status).toBe(404);
  expect(await shownAt(page, `${garage.home()}/${demoCar(1)}`)).toEqual(unknownCar);
  expect(await shownAt(page, `${garage.home()}/${demoEntry(1, 9001)}`)).toEqual(unknownCar);
});

test('an address that holds no id at all looks the same', async ({ page, garage }) => {
  const nothing = await shownAt(page, `/g/${UNKNOWN}`);
  expect(await shownAt(page, '/g/not-an-id')).toEqual(nothing);
  const unknownCar = await shownAt(page, `${garage.home()}/car/${UNKNOWN}`);
  expect(await shownAt(page, `${garage.home()}/car/not-an-id`)).toEqual(unknownCar);
});
