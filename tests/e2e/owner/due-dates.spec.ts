import { expect, type Page } from '@playwright/test';
import { type Situation, situations } from '../../reference/situations/index.ts';
import { wrongWith } from '../../reference/situations/said-as.ts';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { type Happened, type OwnGarage, test } from '../../support/browser/garage-test.ts';

// Situations whose words were written beforehand, as a person finds them on the car's page.

/** Some of those on this day: of a few entries, so that they are written in a moment. */
const SHOWN = [
  'the limit is reached exactly today',
  'the history is incomplete',
  'nothing runs out within three years',
  'a car taken over six weeks ago, of which nothing was recorded since',
  'a planned event of two days takes it past its limit',
  'two limits, of which the months run out first',
  'hard use has switched the shorter schedule on',
];

function situationOf(heading: string): Situation {
  const found = situations.find((one) => one.heading === heading);
  if (!found) throw new RangeError(`there is no situation "${heading}"`);
  return found;
}

/** Writes a situation into a garage through the api. */
async function happen(garage: OwnGarage, { item, lines, planned = [] }: Situation): Promise<void> {
  const { id: _, ...draft } = item;
  await garage.watch(draft);
  for (const line of lines) await garage.write(line as Happened);
  for (const { start, end, sessions, attend } of planned)
    await garage.api.mutate(
      'event.add',
      garage.command({
        eventId: crypto.randomUUID(),
        event: {
          name: 'Circuit days',
          sort: 'circuit',
          start,
          end,
          cars: [garage.carId],
          use: { sessions },
          attend,
        },
      }),
    );
  await garage.counted();
}

function itemsOf(page: Page) {
  return page.getByRole('region', { name: 'Items' });
}

for (const heading of SHOWN)
  test(`the car’s page says as written: ${heading}`, async ({ page, garage }) => {
    const situation = situationOf(heading);
    const { says, because, also = [], asOf, item } = situation;
    await happen(garage, situation);
    await page.goto(garage.car());
    const year = asOf.slice(0, 4);
    const row = itemsOf(page).getByRole('listitem').filter({ hasText: item.name });
    // on the page a colon stands between the state and what is behind it
    const state = await row.locator('[data-state]').textContent();
    expect(wrongWith((state ?? '').replace(': ', ', '), says, year)).toBeNull();
    await row.getByRole('button', { name: `Why: ${item.name}` }).click();
    const told = await row.getByRole('paragraph').allTextContents();
    for (const sentence of [...(because === null ? [] : [because]), ...also])
      expect(
        told.some((one) => wrongWith(one, sentence, year) === null),
        `${sentence}\nis none of\n${told.join('\n')}`,
      ).toBe(true);
    if (because === null) expect(told.join(' ')).not.toMatch(/half the time|in an average week/);
  });

test('the why of an item shows use by kind in a table, and the three days', async ({
  page,
  garage,
}) => {
  await garage.watch({
    name: 'Engine oil',
    limits: [{ measure: 'km', value: 10_000, unit: 'km', weights: { circuit: 12 } }],
    baseline: {
      on: '2026-05-01',
      odometer: { text: '41000', unit: 'km' },
      historyComplete: true,
    },
  });
  const odometer = (text: string) => ({ odometer: { text, unit: 'km' as const } });
  await garage.write({ kind: 'odometer', on: '2026-05-10', ...odometer('41500') });
  await garage.write({ kind: 'session', use: 'circuit', sessions: 4, on: '2026-05-16' });
  await garage.write({ kind: 'odometer', on: '2026-06-14', ...odometer('42660') });
  await garage.counted();
  await page.goto(garage.car());
  const items = itemsOf(page);
  await items.getByRole('button', { name: 'Why: Engine oil' }).click();
  for (const days of ['Likely by', 'Could be as early as', 'Nine times in ten by'])
    await expect(items.getByRole('term').filter({ hasText: days })).toBeVisible();
  await items.getByText('By kind of use').click();
  // 4 sessions of 40 km are 160, counted 12 times; of 1,660 km the rest is road
  const circuit = items.getByRole('row').filter({ hasText: 'on circuits' });
  await expect(circuit.getByRole('cell')).toHaveText(['160 km', '1,920 km']);
  const road = items.getByRole('row').filter({ hasText: 'on the road' });
  await expect(road.getByRole('cell')).toHaveText(['1,500 km', '1,500 km']);
  await expectAccessible(page, 'an item with its why and its use by kind');
});
