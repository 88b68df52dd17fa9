import { expect, type Page } from '@playwright/test';
import type { PutOffView } from '@quartermark/api/client';
import type { ItemDraft } from '@quartermark/engine/log';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { type OwnGarage, test } from '../../support/browser/garage-test.ts';

const label = (name: string, value: string): ItemDraft => ({
  name,
  limits: [{ measure: 'date', value }],
});

/**
 * Opens what there is to tell: the garage's first letter where the worker's tick has written it by now, else what it
 * would say so far. Both have the same lines with the same ways.
 */
async function openWhatIsTold(page: Page, garage: OwnGarage): Promise<void> {
  await page.goto(`${garage.home()}/letters`);
  const written = page
    .getByRole('region', { name: 'Letters so far' })
    .getByRole('heading', { level: 3 })
    .getByRole('link');
  if ((await written.count()) === 0) return;
  await written.click();
  await page.waitForURL(/\/letters\/[\w-]{36}$/);
}

const line = (page: Page, about: RegExp) =>
  page.getByRole('main').getByRole('listitem').filter({ hasText: about });

/** Two labels that ran out together, and one that is due soon, whose parts take three days. */
async function fill(garage: OwnGarage): Promise<void> {
  await garage.watch(label('Harness', '2026-06-01'));
  await garage.watch(label('Seat', '2026-06-01'));
  await garage.watch({ ...label('Extinguisher', '2026-06-24'), leadDays: 3 });
  await garage.counted();
}

test('a letter’s lines open forms that are filled in, and none of them writes before it is pressed', async ({
  page,
  garage,
}) => {
  await fill(garage);
  await openWhatIsTold(page, garage);
  const overdue = line(page, /Overdue\..*Harness.*Seat/);
  await expect(overdue).toBeVisible();
  await expectAccessible(page, 'what is told');
  await overdue.getByRole('link', { name: /^Record the work/ }).click();
  await page.waitForURL(/\/service\?/);
  await expect(page.getByRole('checkbox', { name: 'Harness' })).toBeChecked();
  await expect(page.getByRole('checkbox', { name: 'Seat' })).toBeChecked();
  await expect(page.getByRole('checkbox', { name: 'Extinguisher' })).not.toBeChecked();

  await openWhatIsTold(page, garage);
  await line(page, /Due soon\..*Extinguisher/)
    .getByRole('link', { name: /^Ordered/ })
    .click();
  await page.waitForURL(/\/order\?/);
  await expect(page.getByRole('checkbox', { name: 'Extinguisher' })).toBeChecked();
  expect((await garage.view()).orders).toEqual([]);
  expect(await garage.log()).toEqual([]);
  await page.getByRole('checkbox', { name: 'Seat' }).click();
  await page.getByRole('button', { name: 'Save the orders' }).click();
  await page.waitForURL(/\/car\/[\w-]{36}$/);
  const order = { on: '2026-06-15', expected: '2026-06-18' };
  expect((await garage.view()).orders.map((one) => one.order)).toEqual([order, order]);
});

test('what is put off is silent until its day, and spoken of again on a press', async ({
  page,
  garage,
}) => {
  await fill(garage);
  await openWhatIsTold(page, garage);
  await line(page, /Overdue\..*Harness.*Seat/)
    .getByRole('link', { name: /^After Saturday/ })
    .click();
  await page.waitForURL(/\/put-off\?/);
  const about = page.getByRole('list', { name: 'What is put off' });
  await expect(about).toContainText('Tarnfell Corvo: Harness, overdue');
  await expect(about).toContainText('Tarnfell Corvo: Seat, overdue');
  await expect(page.getByLabel('Silent until')).toHaveValue('2026-06-20');
  await expectAccessible(page, 'put off');
  const putOff = () => garage.api.query<PutOffView>('putOff.list', { garageId: garage.garageId });
  expect((await putOff()).rows).toEqual([]);
  await page.getByRole('button', { name: 'Put it off' }).click();
  const answer = page.getByRole('heading', { level: 1 });
  await expect(answer).toHaveText('2 things are put off.');
  expect((await putOff()).rows.map(({ until }) => until)).toEqual(['2026-06-20', '2026-06-20']);

  await page.goto(`${garage.home()}/letters`);
  const next = page.getByRole('region', { name: /letter so far$/ });
  await expect(next).toBeVisible();
  await expect(next).not.toContainText(/Harness|Seat/);
  await page.getByRole('link', { name: 'What is put off' }).click();
  await page.getByRole('button', { name: /^Speak of it again: .*Seat/ }).click();
  await expect(answer).toHaveText('One thing is put off.');
  await expect(page.getByRole('main')).toContainText('Tarnfell Corvo: Harness, overdue');
});

test('a member says when letters come and of which cars; what was saved can be undone', async ({
  page,
  garage,
}) => {
  await page.goto(`${garage.home()}/letters/settings`);
  const answer = page.getByRole('heading', { level: 1 });
  await expect(answer).toHaveText(
    'A letter each day at 06:00, if something is new, here, in the garage.',
  );
  await page.getByRole('radio', { name: 'Once a week' }).click();
  await page.getByLabel('On which day').selectOption('Sunday');
  await page.getByRole('radio', { name: 'Only some' }).click();
  const save = page.getByRole('button', { name: 'Save what comes' });
  await save.click();
  await expect(page.getByText('Tick at least one car').first()).toBeVisible();
  await expectAccessible(page, 'letter settings with an error');
  await page.getByRole('checkbox', { name: 'Tarnfell Corvo' }).click();
  await save.click();
  await expect(answer).toContainText('A letter each Sunday at 06:00');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(answer).toContainText('A letter each day');
});

test('the owner sets the garage’s post; a secret is shown once, and a test letter says how far it came', async ({
  page,
  garage,
}) => {
  await page.goto(`${garage.home()}/settings`);
  await page.getByRole('link', { name: 'Letters and calendar' }).click();
  await page.waitForURL(/\/letters\/settings$/);
  await page.getByLabel('Letters leave at').fill('07:30');
  await page.getByRole('radio', { name: 'By this mail server' }).click();
  const save = page.getByRole('button', { name: 'Save the garage’s post' });
  await save.click();
  await expect(page.getByLabel('Server', { exact: true })).toHaveAccessibleDescription(
    /mail\.example\.org/,
  );
  // no such name, by RFC 6761
  await page.getByLabel('Server', { exact: true }).fill('mail.garage.invalid');
  await page.getByLabel('Login', { exact: true }).fill('garage');
  await page.getByLabel('Password').fill('not kept in the form');
  await page.getByLabel('Letters come from').fill('garage@example.org');
  await page.getByLabel('Address of the webhook').fill('https://hook.garage.invalid/told');
  await save.click();
  await expect(page.getByText('The webhook’s secret, shown this once')).toBeVisible();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('at 07:30');
  await page.reload();
  await expect(page.getByText('The webhook’s secret, shown this once')).toBeHidden();
  await expect(page.getByLabel('Password')).toHaveValue('');
  await expect(page.getByText('One is kept and never shown.')).toBeVisible();

  await page.getByRole('button', { name: 'Send a test letter' }).click();
  await expect(page.getByText(/^Not delivered yet, 1 try/)).toBeVisible({ timeout: 30_000 });
  await page.getByRole('link', { name: 'What left the house' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Of the last one, 1 on the way.',
  );
  await expect(page.getByRole('heading', { level: 2, name: /^Test letter of/ })).toBeVisible();
  await expectAccessible(page, 'what left the house');
});

test('a private calendar is fetched by its address alone, and ends on a press; mail programs reach their address', async ({
  page,
  garage,
  playwright,
  baseURL,
}) => {
  await page.goto(`${garage.home()}/letters/settings`);
  await page.getByRole('button', { name: 'Make a calendar address' }).click();
  const shown = page.getByText(/\/api\/feed\/[\w-]{43}\.ics$/);
  await expect(shown).toBeVisible();
  const address = (await shown.textContent()) ?? '';
  // nobody is signed in there
  const anybody = await playwright.request.newContext(baseURL === undefined ? {} : { baseURL });
  const calendar = await anybody.get(address);
  expect(calendar.headers()['content-type']).toBe('text/calendar; charset=utf-8');
  expect(await calendar.text()).toContain('BEGIN:VCALENDAR\r\n');
  await page.reload();
  await expect(shown).toBeHidden();
  await page.getByRole('button', { name: 'End the address' }).click();
  await expect(page.getByText('You have no calendar address.')).toBeVisible();
  expect((await anybody.get(address)).status()).toBe(404);

  // from nowhere and without a cookie: what is refused is the secret, not the way in
  const from = {
    headers: { origin: 'https://mail.example' },
    form: { 'List-Unsubscribe': 'One-Click' },
  };
  expect((await anybody.post(`/api/unsubscribe/${'x'.repeat(43)}`, from)).status()).toBe(404);
  await anybody.dispose();
});
