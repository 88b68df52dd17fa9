import { expect, type Page } from '@playwright/test';
import type { EventList, FormerEvents, RequirementsList } from '@quartermark/api/client';
import type { EventDraft } from '@quartermark/engine/log';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { unfold } from '../../support/browser/forms.ts';
import { type OwnGarage, test } from '../../support/browser/garage-test.ts';

const calendar = async ({ api, garageId }: OwnGarage) =>
  (await api.query<EventList>('event.list', { garageId })).events;

async function put(garage: OwnGarage, event: EventDraft): Promise<string> {
  const eventId = crypto.randomUUID();
  await garage.api.mutate('event.add', garage.command({ eventId, event }));
  return eventId;
}

const fold = (page: Page, title: string) => page.locator('details').filter({ hasText: title });

async function nameIt(page: Page, name: string): Promise<void> {
  await page.getByLabel('Name').fill(name);
  await page.getByLabel('First day').fill('2026-06-27');
}

const addIt = (page: Page) => page.getByRole('button', { name: 'Add the event' }).click();

test('who drives which car and which goes on a trailer are said, and stand there again', async ({
  page,
  garage,
}) => {
  const other = await garage.another('Ardvane One');
  const ann = await garage.keep({ kind: 'person', name: 'Ann' });
  await garage.keep({ kind: 'person', name: 'Bo' });
  await page.goto(`${garage.home()}/events/add`);
  await nameIt(page, 'Circuit day');
  await unfold(page, 'Who drives');
  await expect(page.getByText('Tick the cars that go first.').first()).toBeVisible();
  await page.getByRole('checkbox', { name: garage.name, exact: true }).first().click();
  await page.getByRole('checkbox', { name: other.name, exact: true }).first().click();
  await page.getByLabel('Which car').selectOption({ label: `${other.name}: not said` });
  await page.getByRole('checkbox', { name: 'Ann' }).click();
  await expect(fold(page, 'Who drives')).toContainText('said for 1 of 2');
  await unfold(page, 'The way there');
  await page.getByLabel('Distance, one way (optional)').fill('far');
  const trailers = page.getByRole('group', { name: 'On a trailer' });
  await trailers.getByRole('checkbox', { name: garage.name }).click();
  await expectAccessible(page, 'who drives and how they get there');
  await addIt(page);
  await expect(page.getByText(/"far" is not a number/).first()).toBeVisible();
  await page.getByLabel('Distance, one way (optional)').fill('120');
  await addIt(page);
  await page.waitForURL(/\/events$/);
  const [added] = await calendar(garage);
  expect(added?.event).toMatchObject({
    crew: [{ car: other.carId, people: [ann] }],
    travel: { distance: { text: '120', unit: 'km' }, trailered: [garage.carId] },
  });

  await page.goto(`${garage.home()}/events/${added?.eventId}/change`);
  await expect(fold(page, 'The way there').first()).toContainText(
    `120 km each way; ${garage.name} on a trailer, others driven`,
  );
  await expect(fold(page, 'Who drives').first()).toContainText('said for 1 of 2');
});

test('what was said of drivers is kept while somebody is added', async ({ page, garage }) => {
  await garage.keep({ kind: 'person', name: 'Ann' });
  await page.goto(`${garage.home()}/events/add`);
  await nameIt(page, 'Circuit day');
  await page.getByRole('checkbox', { name: garage.name, exact: true }).first().click();
  await unfold(page, 'Who drives');
  await page.getByRole('checkbox', { name: 'Ann' }).click();
  await page.getByRole('link', { name: 'Add somebody' }).click();
  await page.waitForURL(/\/gear\/add\?kind=person$/);
  await page.goto(`${garage.home()}/events/add`);
  await expect(page.getByLabel('Name')).toHaveValue('Circuit day');
  await unfold(page, 'Who drives');
  await expect(page.getByRole('checkbox', { name: 'Ann' })).toBeChecked();
});

test('an event asks what is usual until it asks for its own, and goes back to the garage’s', async ({
  page,
  garage,
}) => {
  const eventId = await put(garage, { name: 'Circuit day', sort: 'circuit', start: '2026-06-27' });
  const form = `${garage.home()}/events/${eventId}/change`;
  await page.goto(form);
  const asks = fold(page, 'What this event asks');
  await expect(asks).toContainText('the usual for a circuit day; common practice, no source');
  await unfold(page, 'What this event asks');
  await page.getByRole('button', { name: 'Set it for this event' }).click();
  await page.getByLabel('Tread lasts until the end').selectOption('off');
  await page.getByLabel('Loudest allowed (optional)').fill('98');
  await page.getByLabel('Rule set (optional)').fill('Club rules');
  await page.getByRole('button', { name: 'Save the change' }).click();
  await expect(page.getByText(/Give the day of their edition/).first()).toBeVisible();
  await page.getByLabel('Edition of (optional)').fill('2026-01-01');
  await expectAccessible(page, 'what an event asks');
  await page.getByRole('button', { name: 'Save the change' }).click();
  await page.waitForURL(/\/events$/);
  const own = (await calendar(garage))[0]?.event.requirements;
  expect(own).toMatchObject({
    weights: { tyres: 'off', torque: 'blocking' },
    noiseDb: 98,
    rules: { name: 'Club rules', edition: '2026-01-01' },
  });

  await page.goto(form);
  await expect(asks).toContainText('this event’s own; Club rules, edition of 1 January 2026');
  await unfold(page, 'What this event asks');
  await page.getByRole('button', { name: 'Back to the garage’s' }).click();
  await page.getByRole('button', { name: 'Save the change' }).click();
  await page.waitForURL(/\/events$/);
  expect((await calendar(garage))[0]?.event.requirements).toBeUndefined();
});

const rows = async ({ api, garageId }: OwnGarage) =>
  (await api.query<RequirementsList>('requirements.list', { garageId })).rows;
const circuitOf = async (garage: OwnGarage) =>
  (await rows(garage)).find(({ use }) => use === 'circuit');

test('a garage asks for its own by the sort of use; undo and a press go back to the usual', async ({
  page,
  garage,
}) => {
  await page.goto(`${garage.home()}/settings`);
  const list = page.getByRole('region', { name: 'What an event asks' });
  await expect(list.getByRole('listitem')).toHaveCount(6);
  await list.getByRole('link', { name: 'For a circuit day' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('common practice, no source');
  await page.getByLabel('Noise measured').selectOption('advice');
  await page.getByLabel('Odometer read within').fill('7');
  await page.getByRole('button', { name: 'Save it' }).click();
  await page.waitForURL(/\/settings$/);
  await expect(list).toContainText('This garage’s own');
  expect(await circuitOf(garage)).toMatchObject({
    usual: false,
    requirements: { odometerDays: 7, weights: { noise: 'advice' } },
  });
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(list).not.toContainText('This garage’s own');
  expect(await circuitOf(garage)).toMatchObject({ usual: true });
});

test('two people change what a circuit day asks: the second sees both versions', async ({
  page,
  garage,
}) => {
  await page.goto(`${garage.home()}/settings/asks/circuit`);
  await page.getByLabel('Odometer read within').fill('7');
  const usual = (await circuitOf(garage))?.requirements;
  const requirements = { ...usual, odometerDays: 14 };
  const change = { use: 'circuit', baseRevision: 0, requirements };
  await garage.api.mutate('requirements.change', garage.command(change));
  await page.getByRole('button', { name: 'Save it' }).click();
  await expect(page.getByText(/^Not saved: somebody saved another version/)).toBeVisible();
  const both = page.getByRole('table');
  await expect(both).toContainText('7 days');
  await expect(both).toContainText('14 days');
  await page.getByRole('button', { name: 'Save mine over it' }).click();
  await page.waitForURL(/\/settings$/);
  expect((await circuitOf(garage))?.requirements.odometerDays).toBe(7);
  await page.goto(`${garage.home()}/settings/asks/circuit`);
  await page.getByRole('button', { name: 'Back to the usual' }).click();
  await page.waitForURL(/\/settings$/);
  expect(await circuitOf(garage)).toMatchObject({ usual: true });
});

test('a former event is taken over a year later, on the same day of the week', async ({
  page,
  garage,
}) => {
  await put(garage, {
    name: 'Summer circuit day',
    sort: 'circuit',
    start: '2025-07-05',
    end: '2025-07-06',
    place: 'the far bend',
    cars: [garage.carId],
    use: { sessions: 9 },
  });
  const { garageId } = garage;
  const { events } = await garage.api.query<FormerEvents>('event.former', { garageId });
  expect(events.map(({ event }) => event.name)).toEqual(['Summer circuit day']);
  await page.goto(`${garage.home()}/events/add`);
  await unfold(page, 'Take over a former one');
  await page.getByLabel('Which one').selectOption({ index: 1 });
  await expect(page.getByText(/is filled in, on 4 to 5 July 2026\./)).toBeVisible();
  await expect(page.getByLabel('First day')).toHaveValue('2026-07-04');
  await expect(page.getByLabel('Last day (optional)')).toHaveValue('2026-07-05');
  await expect(page.getByLabel('Sessions', { exact: true })).toHaveValue('9');
  await expect(
    page.getByRole('checkbox', { name: garage.name, exact: true }).first(),
  ).toBeChecked();
  await addIt(page);
  await page.waitForURL(/\/events$/);
  expect((await calendar(garage))[0]?.event).toMatchObject({
    start: '2026-07-04',
    place: 'the far bend',
  });
});

test('the use is proposed from what this car did at its last circuit days', async ({
  page,
  garage,
}) => {
  for (const [start, sessions] of [
    ['2026-05-02', 5],
    ['2026-05-16', 6],
    ['2026-05-30', 7],
  ] as const) {
    await put(garage, { name: 'Circuit day', sort: 'circuit', start, cars: [garage.carId] });
    await garage.write({ kind: 'session', use: 'circuit', sessions, on: start });
  }
  await page.goto(`${garage.home()}/events/add`);
  await expect(page.getByText('Sessions', { exact: true }).first()).toBeVisible();
  await page.getByRole('checkbox', { name: garage.name, exact: true }).first().click();
  await expect(
    page.getByText(`${garage.name}’s last three circuit days: 6 sessions a day.`),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Use that' }).click();
  await expect(page.getByLabel('Sessions', { exact: true })).toHaveValue('6');
  await expect(page.getByRole('button', { name: 'Use that' })).toHaveCount(0);
});
