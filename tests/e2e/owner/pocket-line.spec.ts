import { expect, type Page } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { unfold } from '../../support/browser/forms.ts';
import { TODAY, test } from '../../support/browser/garage-test.ts';
import {
  expectAllSent,
  keepForLater,
  openPocket,
  reopen,
  target,
} from '../../support/browser/pocket.ts';

test.use({ serviceWorkers: 'allow' });

const oilCheck = async (page: Page, mark: string) => {
  await target(page, 'Oil check').click();
  await page.getByRole('button', { name: mark, exact: true }).click();
  await expect(page.getByText(/^Saved/).first()).toBeVisible();
};

test('a whole track day without signal arrives complete and in order', async ({
  page,
  context,
  garage,
}) => {
  test.setTimeout(90_000);
  await garage.write({
    kind: 'odometer',
    on: '2026-06-06',
    odometer: { text: '41000', unit: 'km' },
  });
  await keepForLater(page, garage);
  await context.setOffline(true);
  let now = await reopen(context, page);
  const save = async () => {
    await now.getByRole('button', { name: 'Save', exact: true }).click();
    await expect(target(now, 'Oil check')).toBeVisible();
  };
  const session = async () => {
    await target(now, 'Session done').click();
    await save();
  };
  const whole = async (kind: string) => {
    await target(now, 'More').click();
    await now.getByRole('button', { name: kind, exact: true }).click();
  };

  await oilCheck(now, 'MAX');
  await session();
  await session();
  await target(now, 'Wheels').click();
  await now.getByRole('textbox', { name: 'Torque' }).fill('120');
  await now.getByRole('button', { name: /^All four torqued/ }).click();
  await oilCheck(now, 'Half');
  await target(now, 'Oil added').click();
  await now.getByRole('button', { name: '0.5 L', exact: true }).click();
  await expect(target(now, 'Oil check')).toBeVisible();
  await session();
  // the phone is put away over lunch, and the browser lets the page go
  now = await reopen(context, now);
  await session();
  await whole('Measurements');
  await unfold(now, 'Brake pads');
  await now
    .getByRole('group', { name: 'Front left' })
    .getByRole('textbox', { name: /inner/i })
    .fill('6,5');
  await save();
  await whole('Incident');
  await now.getByRole('radio', { name: /^Off the track/ }).click();
  await save();
  await session();
  await target(now, 'Odometer').click();
  await now.keyboard.type('140');
  await save();
  await whole('Note');
  await now.getByRole('textbox', { name: 'Note' }).fill('Dry all day. Brakes long by the end.');
  await save();
  await expect(now.getByRole('link', { name: '13 entries wait for signal.' })).toBeVisible();

  await context.setOffline(false);
  await expectAllSent(now);
  const log = await garage.log();
  const told = log
    .filter(({ entry }) => entry.on === TODAY)
    .sort((a, b) => a.recorded - b.recorded);
  expect(told.map(({ entry }) => entry.kind)).toEqual([
    'oilCheck',
    'session',
    'session',
    'wheels',
    'oilCheck',
    'oilTopUp',
    'session',
    'session',
    'measure',
    'incident',
    'session',
    'odometer',
    'note',
  ]);
  expect(told[3]?.entry).toMatchObject({ torque: { text: '120', unit: 'nm' } });
  expect(told.every(({ revision, removed }) => revision === 1 && !removed)).toBe(true);
  // next time the torque is the one used last
  await target(now, 'Wheels').click();
  await expect(now.getByRole('button', { name: 'All four torqued 120 Nm' })).toBeVisible();
});

test('two phones amend one entry: the one without signal is shown both versions, and decides', async ({
  page,
  context,
  garage,
}) => {
  const { id } = await garage.write({ kind: 'note', note: 'Belt squeals.' });
  await keepForLater(page, garage);
  await page.goto(`${garage.home()}/entry/${id}/amend`);
  const note = page.getByRole('textbox', { name: 'Note' });
  await expect(note).toHaveValue('Belt squeals.');
  await context.setOffline(true);
  await note.fill('Belt squeals when wet.');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByRole('link', { name: '1 entry waits for signal.' })).toBeVisible();

  const entry = { ...garage.entry({ kind: 'note', note: 'Belt squeals when cold.' }), id };
  const amending = garage.command({ entryId: id, baseRevision: 1, entry });
  await garage.api.mutate('entry.amend', amending);
  const now = await reopen(context, page);
  await context.setOffline(false);
  await now.getByRole('link', { name: '1 entry needs your decision.' }).click();
  const both = now.getByRole('table');
  await expect(both).toContainText('Belt squeals when wet.');
  await expect(both).toContainText('Belt squeals when cold.');
  await expectAccessible(now, 'both versions in the line');
  await now.getByRole('button', { name: 'Keep mine on top of theirs' }).click();
  await expect(now.getByText('Nothing waits on this phone')).toBeVisible();
  expect((await garage.log())[0]).toMatchObject({
    revision: 3,
    entry: { note: 'Belt squeals when wet.' },
  });
});

test('what was refused stays with its sentence, what came after it goes on, and it is mended in its form', async ({
  page,
  context,
  garage,
}) => {
  await keepForLater(page, garage);
  await context.setOffline(true);
  const now = await reopen(context, page);
  await target(now, 'More').click();
  await now.getByRole('button', { name: 'Note', exact: true }).click();
  await now.getByRole('textbox', { name: 'Note' }).fill('Dated wrongly.');
  await unfold(now, 'Day and time');
  await now.getByLabel(/^Day/).fill('2026-06-25');
  await now.getByRole('button', { name: 'Save', exact: true }).click();
  await oilCheck(now, 'Half');
  await context.setOffline(false);
  await now.getByRole('link', { name: '1 entry needs your decision.' }).click();
  await expect(now.getByText(/2026-06-25 has not come yet/)).toBeVisible();
  expect((await garage.logOf(1)).map(({ entry }) => entry.kind)).toEqual(['oilCheck']);

  await now.getByRole('button', { name: 'Open and mend' }).click();
  await expect(now.getByRole('textbox', { name: 'Note' })).toHaveValue('Dated wrongly.');
  await now.getByLabel(/^Day/).fill(TODAY);
  await now.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(now.getByText('Nothing waits on this phone')).toBeVisible();
  const log = await garage.log();
  expect(log.map(({ entry }) => [entry.kind, entry.on])).toContainEqual(['note', TODAY]);
  expect(log).toHaveLength(2);
});

test('what was refused is thrown away only after it was shown', async ({
  page,
  context,
  garage,
}) => {
  await keepForLater(page, garage);
  await context.setOffline(true);
  const now = await reopen(context, page);
  await oilCheck(now, 'Half');
  await now.getByRole('link', { name: '1 entry waits for signal.' }).click();
  await now.getByRole('button', { name: 'Throw away' }).click();
  await expect(now.getByText('Throw this away?', { exact: false })).toBeVisible();
  await expect(now.getByRole('listitem')).toContainText('Oil check, half');
  await now.getByRole('button', { name: 'Keep it' }).click();
  await now.getByRole('button', { name: 'Throw away' }).click();
  await now.getByRole('button', { name: 'Yes, throw it away' }).click();
  await expect(now.getByText('Nothing waits on this phone')).toBeVisible();
});

test('an answer that is lost on its way back makes no second entry', async ({ page, garage }) => {
  await openPocket(page, garage);
  let lost = 0;
  await page.route(/entry\.record/, async (route) => {
    if (lost > 0) return route.continue();
    lost += 1;
    // the server does it, and nobody hears of it
    await route.fetch();
    await route.abort('connectionreset');
  });
  await oilCheck(page, 'Half');
  await expect(page.getByText('Saved on this phone, waits for signal.')).toBeVisible();
  expect(await garage.log()).toHaveLength(1);
  await page.evaluate(`window.dispatchEvent(new Event('online'))`);
  await expectAllSent(page);
  expect(lost).toBe(1);
  expect((await garage.log({ removed: true })).map(({ revision }) => revision)).toEqual([1]);
});

test('two tabs that both send one line make one entry of each', async ({
  page,
  context,
  garage,
}) => {
  await keepForLater(page, garage);
  await context.setOffline(true);
  const now = await reopen(context, page);
  for (const mark of ['MIN', 'Half', 'MAX']) await oilCheck(now, mark);
  const other = await context.newPage();
  // a browser without locks: nothing says whose turn it is
  await other.addInitScript(`Object.defineProperty(navigator, 'locks', { value: undefined })`);
  await other.goto('/pocket');
  await expect(other.getByRole('link', { name: '3 entries wait for signal.' })).toBeVisible();
  await context.setOffline(false);
  await expectAllSent(now);
  await expectAllSent(other);
  expect(await garage.log({ removed: true })).toHaveLength(3);
});

test('the form of a garage falls into the line where no answer comes, and not where it is refused', async ({
  page,
  context,
  garage,
}) => {
  await garage.counted();
  // before the browser keeps any page, so that it stays on this one
  await page.addInitScript(`delete Navigator.prototype.serviceWorker`);
  await page.goto(garage.record('note'));
  await page.getByRole('textbox', { name: 'Note' }).fill('No signal at the hairpin.');
  await context.setOffline(true);
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByText('Saved on this phone, waits for signal.')).toBeVisible();
  await context.setOffline(false);
  await garage.logOf(1);

  await page.goto(garage.record('note'));
  await page.getByRole('textbox', { name: 'Note' }).fill('Tomorrow’s news.');
  await unfold(page, 'Day and time');
  await page.getByLabel(/^Day/).fill('2026-06-25');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByText(/has not come yet/).first()).toBeVisible();
  await expect(page.getByRole('link', { name: /needs your decision/ })).toHaveCount(0);
});

test('a page that needs the server leads to the one that does not', async ({
  page,
  context,
  garage,
}) => {
  await keepForLater(page, garage);
  await context.setOffline(true);
  await page.goto(garage.car());
  await expect(page.getByText('No signal: that page needs the server.')).toBeVisible();
  await expect(target(page, 'Oil check')).toBeVisible();
  await context.setOffline(false);
  await page.getByRole('link', { name: 'Try that page again' }).click();
  await page.waitForURL(/\/car\/[\da-f-]{36}$/);
});

test('signed out, everything waits and says so, and is sent after signing in', async ({
  page,
  context,
  garage,
}) => {
  await keepForLater(page, garage);
  const cookies = await context.cookies();
  await context.setOffline(true);
  const now = await reopen(context, page);
  await oilCheck(now, 'Half');
  await context.clearCookies();
  await context.setOffline(false);
  await expect(now.getByText('You are signed out.')).toBeVisible();
  await expect(now.getByRole('link', { name: 'Sign in', exact: true })).toHaveAttribute(
    'href',
    '/sign-in?to=%2Fpocket',
  );
  await expect(now.getByRole('link', { name: '1 entry waits for you to sign in.' })).toBeVisible();
  await context.addCookies(cookies);
  await now.reload();
  await expectAllSent(now);
  await garage.logOf(1);
});
