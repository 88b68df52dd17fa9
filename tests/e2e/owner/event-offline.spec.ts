import { randomUUID } from 'node:crypto';
import { type Browser, type BrowserContext, expect, type Page } from '@playwright/test';
import type { EventPage } from '@quartermark/api/client';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { type OwnGarage, test } from '../../support/browser/garage-test.ts';
import { expectAllSent, keepForLater, reopen, target } from '../../support/browser/pocket.ts';

const NAME = 'Circuit day at the airfield';

async function planDay(garage: OwnGarage): Promise<string> {
  const eventId = randomUUID();
  const event = {
    name: NAME,
    sort: 'circuit',
    start: '2026-06-20',
    cars: [garage.carId],
    use: { sessions: 4 },
  };
  await garage.api.mutate('event.add', garage.command({ eventId, event }));
  return eventId;
}

/** Somebody else's phone, signed in to the same garage. */
const anotherPhone = (browser: Browser, baseURL: string): Promise<BrowserContext> =>
  browser.newContext({
    baseURL,
    storageState: 'test-results/owner.json',
    serviceWorkers: 'allow',
    viewport: { width: 360, height: 760 },
    hasTouch: true,
  });

const openEvent = async (page: Page) => {
  await page.getByRole('button', { name: new RegExp(`^${NAME}, in 5 days`) }).click();
  await expect(page.getByRole('button', { name: 'The inspector’s page' })).toBeVisible();
};
const lineOf = (page: Page, at: number) => page.getByRole('checkbox').nth(at);
const expectTicked = async (page: Page, ticked: readonly boolean[]) => {
  for (const [at, isTicked] of ticked.entries())
    await expect(lineOf(page, at)).toBeChecked({ checked: isTicked });
};

test.use({ serviceWorkers: 'allow' });

test('two phones without signal tick the same list of work: no tick is lost', async ({
  page,
  context,
  browser,
  baseURL,
  garage,
}) => {
  test.setTimeout(120_000);
  const eventId = await planDay(garage);
  const other = await anotherPhone(browser, baseURL ?? '');
  const theirs = await other.newPage();
  await keepForLater(page, garage);
  await keepForLater(theirs, garage);
  await Promise.all([context.setOffline(true), other.setOffline(true)]);
  let mine = await reopen(context, page);
  const hers = await reopen(other, theirs);
  await openEvent(mine);
  await openEvent(hers);
  await expectAccessible(mine, 'an event in the paddock, without signal');
  expect(await mine.getByRole('checkbox').count()).toBeGreaterThan(3);

  await lineOf(mine, 0).click();
  await lineOf(mine, 1).click();
  await lineOf(hers, 1).click();
  await lineOf(hers, 2).click();
  await lineOf(hers, 3).click();
  // taken for another line
  await lineOf(hers, 3).click();
  await expect(mine.getByRole('link', { name: '2 ticks wait for signal.' })).toBeVisible();
  await expect(hers.getByRole('link', { name: '4 ticks wait for signal.' })).toBeVisible();
  await expect(mine.getByText(/ticked on this phone, waits for signal/)).toHaveCount(2);
  await expectTicked(mine, [true, true, false, false]);

  // the browser lets the page go
  mine = await reopen(context, mine);
  await openEvent(mine);
  await expectTicked(mine, [true, true, false, false]);

  await context.setOffline(false);
  await expectAllSent(mine);
  await expectTicked(mine, [true, true, false, false]);
  await other.setOffline(false);
  await expectAllSent(hers);
  await expectTicked(hers, [true, true, true, false]);
  mine = await reopen(context, mine);
  await openEvent(mine);
  await expectTicked(mine, [true, true, true, false]);

  const asked = { garageId: garage.garageId, eventId };
  const { ticks } = await garage.api.query<EventPage>('event.view', asked);
  expect(ticks).toHaveLength(6);
  expect(new Set(ticks.map(({ tickId }) => tickId)).size).toBe(6);
  await other.close();
});

test('without signal an event says that it is older than what was recorded here since', async ({
  page,
  context,
  garage,
}) => {
  await planDay(garage);
  await keepForLater(page, garage);
  await context.setOffline(true);
  const now = await reopen(context, page);
  await openEvent(now);
  await expect(now.getByText(/^Worked out 15 June 2026, .*Void after any entry\.$/)).toBeVisible();
  const older = now.getByText(/^Older than your last entries/);
  await expect(older).toHaveCount(0);
  await now.getByRole('button', { name: 'Back to recording' }).click();
  await target(now, 'Oil check').click();
  await now.getByRole('button', { name: 'MAX', exact: true }).click();
  await expect(now.getByText(/^Saved/).first()).toBeVisible();
  await openEvent(now);
  await expect(older).toBeVisible();
  await now.getByRole('button', { name: 'The inspector’s page' }).click();
  await expect(now.getByText('Older than the last entries on this phone.')).toHaveCount(2);
  await expect(now.getByRole('button', { name: 'Print' })).toBeVisible();
  await now.getByRole('button', { name: 'Back to the event' }).click();

  await context.setOffline(false);
  await expectAllSent(now);
  await expect(older).toHaveCount(0, { timeout: 20_000 });
});

test('a tick of an event that was taken off meanwhile holds up nothing', async ({
  page,
  context,
  garage,
}) => {
  const eventId = await planDay(garage);
  await keepForLater(page, garage);
  await context.setOffline(true);
  const now = await reopen(context, page);
  await openEvent(now);
  await lineOf(now, 0).click();
  await expect(now.getByRole('link', { name: '1 tick waits for signal.' })).toBeVisible();
  await garage.api.mutate('event.remove', garage.command({ eventId, baseRevision: 1 }));
  await context.setOffline(false);
  await expectAllSent(now);
  await expect(target(now, 'Oil check')).toBeVisible();
  await expect(now.getByRole('button', { name: new RegExp(NAME) })).toHaveCount(0);
});

test('a tick that the server does not take stays with its sentence until somebody decides', async ({
  page,
  context,
  garage,
}) => {
  await planDay(garage);
  await keepForLater(page, garage);
  await context.setOffline(true);
  const now = await reopen(context, page);
  await openEvent(now);
  const label = await now.getByRole('checkbox').first().getAttribute('aria-labelledby');
  const work = await now.locator(`[id="${label}"]`).textContent();
  await lineOf(now, 0).click();
  await expect(now.getByRole('link', { name: '1 tick waits for signal.' })).toBeVisible();
  const message = 'There is no such event here.';
  const refusal = { code: 'notFound', field: 'eventId', message };
  const data = { code: 'NOT_FOUND', httpStatus: 404, path: 'event.tick', refusal };
  const answer = [{ error: { json: { message, code: -32004, data } } }];
  await context.route(/event\.tick/, (route) => route.fulfill({ status: 404, json: answer }));
  await context.setOffline(false);
  await now.getByRole('link', { name: '1 tick needs your decision.' }).click();
  await expect(now.getByText('Not taken by the server.')).toBeVisible();
  await expect(now.getByRole('listitem')).toContainText(message);
  await expect(now.getByRole('listitem')).toContainText(`Done, ${work?.replace(' (advice)', '')}`);
  await expectAccessible(now, 'a tick that was not taken');
  await context.unroute(/event\.tick/);
  await now.getByRole('button', { name: 'Try again' }).click();
  await expect(now.getByText('Nothing waits on this phone')).toBeVisible();
});
