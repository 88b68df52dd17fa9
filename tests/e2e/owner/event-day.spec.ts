import { expect, type Locator, type Page } from '@playwright/test';
import type { Written } from '@quartermark/api/client';
import { WEIGHED_NEEDS, type WeighedNeed } from '@quartermark/engine/log';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { BRAKE_FLUID, type OwnGarage, test } from '../../support/browser/garage-test.ts';

const circuit = { kind: 'session', use: 'circuit' } as const;
const hasRoom = (page: Page) => (page.viewportSize()?.width ?? 0) >= 960;

/** A circuit day on Saturday that asks for nothing but what is said, so that a test is about one thing. */
async function circuitDay(garage: OwnGarage, asked: readonly WeighedNeed[], more: object = {}) {
  const eventId = crypto.randomUUID();
  const weights = Object.fromEntries(
    WEIGHED_NEEDS.map((need) => [need, asked.includes(need) ? 'blocking' : 'off']),
  );
  const event = {
    name: 'Circuit day',
    sort: 'circuit',
    start: '2026-06-20',
    cars: [garage.carId],
    use: { sessions: 4 },
    requirements: {
      weights,
      limitsOf: ['brakeFluid'],
      watched: [],
      oilFloor: 0,
      odometerDays: 366,
      inspectionDays: 366,
    },
    ...more,
  };
  await garage.api.mutate('event.add', garage.command({ eventId, event }));
  return { eventId, address: `${garage.home()}/events/${eventId}` };
}

const answer = (page: Page) => page.getByRole('heading', { level: 1 });

/** What is said of a need of a car: its line where one car is shown, its cell where they stand in a table. */
function need(page: Page, title: string, car: string): Locator {
  if (hasRoom(page)) return page.getByRole('button', { name: `${title}, ${car}:` });
  const named = page.getByRole('heading', { level: 4, name: title, exact: true });
  return page.getByRole('listitem').filter({ has: named });
}

/** Opens why a need stands as it does. */
async function open(page: Page, title: string, car: string): Promise<void> {
  if (hasRoom(page)) return need(page, title, car).click();
  await page.getByRole('button', { name: `Why: ${title}, ${car}` }).click();
}

test('a session recorded elsewhere changes the verdict of an open event, without a reload', async ({
  page,
  garage,
}) => {
  await garage.watch({ ...BRAKE_FLUID, role: 'brakeFluid', leadDays: 4 });
  const { address } = await circuitDay(garage, ['limit']);
  await page.goto(address);
  await page.evaluate('globalThis.neverReloaded = true');
  await expect(answer(page)).toHaveText(`Ready for Saturday, by the log: ${garage.name}.`);
  await expect(page.getByRole('main')).toContainText('Nothing must be ordered today.');

  // 15 of 18 sessions, and 4 more at the event
  await garage.write({ ...circuit, sessions: 15, on: '2026-06-14' });
  await expect(answer(page)).toHaveText('Not ready for Saturday yet.');
  const main = page.getByRole('main');
  await expect(main).toContainText(`Can be ready by Fri 19: ${garage.name} (Brake fluid).`);
  await expect(main).toContainText(`Order today: Brake fluid for ${garage.name}.`);
  await expect(need(page, 'Brake fluid', garage.name)).toContainText('After the work');
  await expect(need(page, 'Brake fluid', garage.name)).toContainText('short');
  expect(await page.evaluate('globalThis.neverReloaded')).toBe(true);
  await expectAccessible(page, 'an event with work');

  await open(page, 'Brake fluid', garage.name);
  await expect(main).toContainText(
    /To do: Renew the brake fluid, by \w{3} \d\d at the latest\. Order today, the parts take 4 days\./,
  );
  await page.getByRole('button', { name: 'The entry it rests on: Brake fluid' }).click();
  await expect(main.getByRole('link', { name: 'Circuit' })).toBeVisible();
  await main
    .getByRole('link', { name: /^Record it: service ?: Brake fluid/ })
    .first()
    .click();
  await page.waitForURL(/\/record\/.*\/service\?item=/);
  await expect(page.getByRole('checkbox', { name: 'Brake fluid' })).toBeChecked();
});

test('pads measured elsewhere turn from not on record to fine on an open event', async ({
  page,
  garage,
}) => {
  const pads = await garage.keep({
    kind: 'component',
    sort: 'pads',
    name: 'Front pads',
    condition: 'new',
  });
  await garage.write({
    kind: 'fit',
    component: pads,
    change: 'on',
    on: '2026-05-01',
    positions: ['front'],
    condition: 'new',
    bedding: 'bedded',
  });
  await garage.write({ ...circuit, sessions: 4, on: '2026-05-09' });
  const measured = (on: string, inner: string) =>
    garage.write({
      kind: 'measure',
      component: pads,
      on,
      pads: [{ corner: 'frontLeft', inner: { text: inner, unit: 'mm' } }],
    });
  await measured('2026-05-10', '9.4');
  // more than a day's worth since it was measured
  await garage.write({ ...circuit, sessions: 8, on: '2026-06-06' });
  const { address } = await circuitDay(garage, ['pads']);
  await page.goto(address);
  await expect(page.getByRole('main')).toContainText(`Not on record: ${garage.name} (Front pads).`);
  await expect(need(page, 'Front pads', garage.name)).toContainText('Not on record');

  await measured('2026-06-07', '7.8');
  await expect(answer(page)).toHaveText(`Ready for Saturday, by the log: ${garage.name}.`);
});

test('a need is taken upon oneself with a reason, stands beside the verdict, and is withdrawn', async ({
  page,
  garage,
}) => {
  const { address } = await circuitDay(garage, ['inspection']);
  await page.goto(address);
  await expect(answer(page)).toHaveText('Not ready for Saturday yet.');
  await open(page, 'Looked over', garage.name);
  const take = `Take this upon yourself: Looked over, ${garage.name}`;
  await page.getByRole('button', { name: take }).click();
  const form = page.getByRole('form', { name: 'Take upon yourself: Looked over' });
  await form.getByRole('button', { name: 'Take it upon yourself' }).click();
  await expect(form).toContainText('Say why; it stays beside the verdict.');
  await form.getByLabel('Because').fill('Seen by the same eyes last week');
  await expectAccessible(page, 'taking a need upon oneself');
  await form.getByRole('button', { name: 'Take it upon yourself' }).click();

  await expect(answer(page)).toContainText(
    new RegExp(`^Ready for Saturday, by the log: ${garage.name} \\(Looked over: taken on by .+\\)`),
  );
  const taken = /took it on, on Mon 15 June: Seen by the same eyes last week/;
  await expect(page.getByText(taken).filter({ visible: true }).first()).toBeVisible();
  await page.reload();
  await expect(page.getByText(taken).filter({ visible: true }).first()).toBeVisible();
  await open(page, 'Looked over', garage.name);
  await page.getByRole('button', { name: 'Withdraw it: Looked over' }).click();
  await expect(answer(page)).toHaveText('Not ready for Saturday yet.');
});

test('nobody takes the torque of wheels upon himself: the page says why, and the server refuses it', async ({
  page,
  garage,
}) => {
  const { eventId, address } = await circuitDay(garage, ['torque']);
  await page.goto(address);
  await open(page, 'Wheel torque', garage.name);
  await expect(
    page.getByText('Nobody can take this upon himself').filter({ visible: true }),
  ).toBeVisible();
  await expect(page.getByRole('button', { name: /^Take this upon yourself/ })).toHaveCount(0);
  const acceptance = { event: eventId, car: garage.carId, need: 'torque', because: 'by feel' };
  const refused = await garage.api.attempt<Written>(
    'event.accept',
    garage.command({ acceptanceId: crypto.randomUUID(), acceptance }),
  );
  expect(refused.status).toBe(400);
  expect(refused.refusal?.field).toBe('acceptance.need');
});

test('work is ticked off and taken back, seen in another window, and is no record', async ({
  page,
  garage,
}) => {
  const { address } = await circuitDay(garage, ['inspection']);
  await page.goto(address);
  const other = await page.context().newPage();
  await other.goto(address);
  const line = (where: Page) =>
    where.getByRole('region', { name: `The work: ${garage.name}` }).getByRole('listitem');
  await line(page).getByRole('checkbox').click();
  await expect(line(page)).toContainText(/Ticked by .+, 15 June 2026, .+ Not recorded yet\./);
  await expect(line(other)).toContainText(/Ticked by .+ Not recorded yet\./);
  await expect(line(other).getByRole('checkbox')).toBeChecked();
  // a tick changes no verdict
  await expect(answer(page)).toHaveText('Not ready for Saturday yet.');
  await line(other).getByRole('checkbox').click();
  await expect(line(page)).toContainText('Taken back by');
  await expect(line(page).getByRole('checkbox')).not.toBeChecked();
  await garage.write({ kind: 'inspection', purpose: 'Before the circuit day', result: 'passed' });
  await expect(answer(page)).toHaveText(`Ready for Saturday, by the log: ${garage.name}.`);
  await expect(line(page)).toHaveCount(0);
});

test('cars are shown one at a time by buttons and arrow keys, and the address keeps which', async ({
  page,
  garage,
}) => {
  const second = await garage.another('Tarnfell Brisk');
  const { address } = await circuitDay(garage, ['inspection'], {
    cars: [garage.carId, second.carId],
  });
  await page.goto(address);
  if (hasRoom(page)) await page.getByRole('radio', { name: 'A car at a time' }).click();
  const name = page
    .getByRole('region', { name: 'Cars by needs' })
    .getByRole('heading', { level: 3 });
  await expect(name).toHaveText(garage.name);
  await page.getByRole('button', { name: 'Next car' }).click();
  await expect(name).toHaveText(second.name);
  await page.keyboard.press('ArrowLeft');
  await expect(name).toHaveText(garage.name);
  await page.keyboard.press('ArrowRight');
  await expect(name).toHaveText(second.name);
  await page.reload();
  if (hasRoom(page)) await page.getByRole('radio', { name: 'A car at a time' }).click();
  await expect(name).toHaveText(second.name);
});

test('an event that names no car says so, and one that is over says what is on record of it', async ({
  page,
  garage,
}) => {
  const none = await circuitDay(garage, [], { cars: [] });
  await page.goto(none.address);
  await expect(answer(page)).toContainText('No car is named for it yet');
  await garage.write({ ...circuit, sessions: 3, on: '2026-06-10' });
  const over = await circuitDay(garage, [], { start: '2026-06-10' });
  await page.goto(over.address);
  await expect(answer(page)).toHaveText(
    'It is over, 5 days ago. What the cars did there is on record.',
  );
  await expect(page.getByRole('region', { name: garage.name })).toContainText(
    'Circuit: 3 sessions',
  );
});
