import { expect, type Page } from '@playwright/test';
import {
  demoCar,
  demoEntry,
  demoEvent,
  demoFact,
  demoGear,
  demoItem,
  demoItems,
  demoLayUp,
  demoLetter,
  demoRecord,
} from './demo.ts';

export type Screen = {
  name: string;
  /** inside the demo garage, or from the root where it begins with a slash; some have to be looked for */
  path: string | ((page: Page, garage: string) => Promise<string>);
  /** waits for what the worker does at its own pace */
  slow?: true;
  /** 200 unless said otherwise */
  status?: number;
  /** opens what is folded away */
  unfold?: (page: Page) => Promise<void>;
};

/** As long as a slow screen may take. */
export const SLOW_MS = 7 * 60_000;

const KINDS = [
  'odometer',
  'fuel',
  'oilCheck',
  'oilTopUp',
  'oilChange',
  'drive',
  'session',
  'strip',
  'service',
  'note',
] as const;

/** Opens all that the road asks of a car in use, and each "Why" of its page. */
async function openAllOfACar(page: Page): Promise<void> {
  await page.locator('summary').filter({ hasText: 'What the road asks' }).click();
  await openAllWhys(page);
}

/** Opens each "Why" of a page. */
async function openAllWhys(page: Page): Promise<void> {
  const closed = page.getByRole('button', { name: /^Why: /, expanded: false });
  for (let left = await closed.count(); left > 0; left = await closed.count())
    await closed.first().click();
}

/** Opens the "Why" of a car's oil. */
async function openOilsWhy(page: Page): Promise<void> {
  for (const why of await page.getByRole('button', { name: /^Why/, expanded: false }).all())
    await why.click();
}

/** Opens the table behind the season board, where there is room for the board. */
async function openTheTable(page: Page): Promise<void> {
  const table = page.locator('summary').filter({ hasText: 'As a table' });
  if (await table.isVisible()) await table.click();
}

/** Opens the forms of a new order and of one that is on record. */
async function openTheOrders(page: Page): Promise<void> {
  await page
    .locator('summary')
    .filter({ hasText: /^Ordered$/ })
    .click();
  await page.getByRole('button', { name: 'Change this order' }).click();
}

/** Opens a need of each car of an event, and all that is folded there. */
async function openAnEvent(page: Page): Promise<void> {
  const all = page.getByRole('button', { name: /^Show \d+ more that are fine/ });
  if (await all.isVisible()) {
    await all.click();
    await page.getByRole('button', { name: /^Wheel torque, Velmora Quist:/ }).click();
  }
  await openACarsNeeds(page);
}

/** Shows one car of an event, with the form that takes a need upon oneself. */
async function openACar(page: Page): Promise<void> {
  const one = page.getByRole('radio', { name: 'A car at a time' });
  if (await one.isVisible()) await one.click();
  await page.getByRole('button', { name: 'Next car' }).click();
  await openACarsNeeds(page);
  await page
    .getByRole('button', { name: /^Take this upon yourself/ })
    .first()
    .click();
}

async function openACarsNeeds(page: Page): Promise<void> {
  for (const fold of await page
    .locator('summary')
    .filter({ hasText: /are fine|With care/ })
    .all())
    if (await fold.isVisible()) await fold.click();
  await openAllWhys(page);
}

/** Opens folded parts of a form. */
async function openFolds(page: Page, ...titles: readonly string[]): Promise<void> {
  for (const title of titles) await page.locator('summary').filter({ hasText: title }).click();
}

/** Opens what an event asks, and sets it for this event. */
async function setWhatItAsks(page: Page): Promise<void> {
  await openFolds(page, 'What this event asks');
  const own = page.getByRole('button', { name: 'Set it for this event' });
  if (await own.isVisible()) await own.click();
}

/** Shows the fields of a letter once a week, of some cars. */
async function chooseOnceAWeek(page: Page): Promise<void> {
  await page.getByRole('radio', { name: 'Once a week' }).click();
  await page.getByRole('radio', { name: 'Only some' }).click();
}

/** Opens the text of a letter. */
async function openTheText(page: Page): Promise<void> {
  await openFolds(page, 'The letter as text');
}

/** Every screen there is, as the demo garage fills it. */
export const EVERY_SCREEN: readonly Screen[] = [
  { name: 'garage', path: '', unfold: openTheTable },
  { name: 'what is due', path: 'due' },
  { name: 'what is due, by car', path: 'due?sort=car' },
  { name: 'settings', path: 'settings' },
  { name: 'what a circuit day asks', path: 'settings/asks/circuit' },
  { name: 'labels', path: 'labels' },
  { name: 'pocket', path: '/pocket' },
  { name: 'car, hard used', path: demoCar(1), unfold: openAllOfACar },
  { name: 'car, at the drag strip', path: demoCar(2) },
  { name: 'car, with entries to mend', path: demoCar(4), unfold: openAllWhys },
  { name: 'car, laid up', path: demoCar(5) },
  { name: 'car, bought without papers', path: demoCar(6) },
  { name: 'oil of a car', path: `${demoCar(1)}/oil`, unfold: openOilsWhy },
  { name: 'learn the stick', path: `${demoCar(1)}/oil/stick` },
  { name: 'oil compared', path: 'oil' },
  { name: 'what if', path: `${demoCar(1)}/what-if` },
  {
    name: 'what if, answered',
    path: `${demoCar(1)}/what-if?add=circuit+2026-06-27+2026-06-28+sessions+12`,
  },
  { name: 'add a car', path: 'car/add' },
  { name: 'change a car', path: `${demoCar(1)}/change` },
  { name: 'add an item', path: `${demoCar(1)}/item/add` },
  { name: 'change an item', path: demoItem(1, 1) },
  { name: 'begin with a car', path: `${demoCar(6)}/begin` },
  { name: 'sets, tools and people', path: 'gear' },
  { name: 'a tyre set', path: demoGear(1), unfold: openAllWhys },
  { name: 'brake pads, not bedded', path: demoGear(4) },
  { name: 'a tool', path: demoGear(6), unfold: openAllWhys },
  { name: 'a person', path: demoGear(9) },
  { name: 'add a set, a tool or a person', path: 'gear/add' },
  { name: 'change a set', path: `${demoGear(1)}/change` },
  { name: 'service done on a tool', path: `${demoGear(6)}/done` },
  { name: 'which car a part goes on', path: `${demoGear(1)}/car` },
  { name: 'a finding on a tool', path: `${demoGear(6)}/record/finding` },
  { name: 'measurements of a set', path: `${demoGear(3)}/record/measure` },
  { name: 'add an item of a tool', path: `${demoGear(6)}/item/add` },
  { name: 'events', path: 'events' },
  { name: 'add an event', path: 'events/add' },
  { name: 'an event, cars by needs', path: `events/${demoEvent(2)}`, unfold: openAnEvent },
  { name: 'an event, a car at a time', path: `events/${demoEvent(2)}`, unfold: openACar },
  { name: 'an event without cars', path: `events/${demoEvent(1)}` },
  { name: 'an event that is over', path: `events/${demoEvent(6)}` },
  { name: 'sheet of an event', path: `events/${demoEvent(2)}/sheet` },
  { name: 'event in the paddock', path: '/pocket#event' },
  { name: 'sheet in the paddock', path: '/pocket#paper' },
  {
    name: 'change an event',
    path: `events/${demoEvent(1)}/change`,
    unfold: (page) => openFolds(page, 'Who drives', 'The way there'),
  },
  {
    name: 'change an event with its use',
    path: `events/${demoEvent(2)}/change`,
    unfold: setWhatItAsks,
  },
  { name: 'debrief', path: `events/${demoEvent(6)}/debrief` },
  { name: 'plan a lay-up', path: 'lay-up/add' },
  { name: 'change a planned lay-up', path: `lay-up/${demoLayUp(1)}` },
  { name: 'an item whose parts are ordered', path: demoItem(1, 5), unfold: openTheOrders },
  { name: 'spec sheet', path: `${demoCar(1)}/spec` },
  { name: 'spec sheet, not written', path: `${demoCar(2)}/spec` },
  { name: 'change a spec sheet', path: `${demoCar(1)}/spec/change` },
  { name: 'findings', path: 'findings' },
  { name: 'air and pressures', path: 'air', unfold: openAllWhys },
  { name: 'log', path: 'log' },
  { name: 'we said, it was', path: 'said', unfold: openAllWhys },
  { name: 'log of findings and incidents', path: 'log?kind=trouble' },
  { name: 'letters', path: 'letters' },
  { name: 'what letters come, and when', path: 'letters/settings', unfold: chooseOnceAWeek },
  { name: 'put off', path: `letters/put-off?fact=${demoFact(1, 5)}&until=2026-06-20` },
  { name: 'parts were ordered', path: `${demoCar(1)}/order?${demoItems(1, 1, 2)}` },
  { name: 'what happened, which car', path: 'record' },
  { name: 'what happened, what', path: demoRecord(1) },
  ...KINDS.map((kind) => ({ name: `record ${kind}`, path: demoRecord(1, `/${kind}`) })),
  { name: 'entry', path: demoEntry(1, 9001) },
  { name: 'entry, amended', path: demoEntry(4, 9024) },
  { name: 'entry, removed', path: demoEntry(4, 9026) },
  { name: 'first start', path: '/start' },
  { name: 'sign in', path: '/sign-in' },
  { name: 'nothing here', path: '/no-such-page', status: 404 },
  // last, since the first letter of the garage comes at a tick of the worker
  { name: 'a letter as it was sent', path: demoLetter, slow: true, unfold: openTheText },
];

/** Goes to a screen and waits until it stands. */
export async function visit(page: Page, garage: string, screen: Screen): Promise<void> {
  const { unfold, status = 200 } = screen;
  const path = typeof screen.path === 'string' ? screen.path : await screen.path(page, garage);
  const inside = path === '' ? garage : `${garage}/${path}`;
  const answer = await page.goto(path.startsWith('/') ? path : inside);
  expect(answer?.status(), `the screen "${screen.name}"`).toBe(status);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.waitForLoadState('load');
  await unfold?.(page);
}
