import { expect, type Locator, type Page, test } from '@playwright/test';
import expected from '../../../seed/expected.json' with { type: 'json' };
import { demoGarageOf } from '../../support/browser/demo.ts';
import { Taps } from '../../support/browser/taps.ts';

type Fact = (typeof expected.facts)[number];
type Expect = {
  measure?: string;
  unit?: string;
  limit?: number;
  amount?: number;
  remaining?: number;
  due?: string;
  reached?: string;
  remainingDays?: number;
  severe?: boolean;
  severeThreshold?: number;
  severeSince?: string;
  onOffset?: number;
  reading?: number;
  added?: number;
  overdueItems?: number;
  laidUpSince?: string;
  amended?: boolean;
  removed?: boolean;
};

/** Names of the cars, by which the facts call them. */
const CARS: Record<string, string> = {
  circuit: 'Ardvane Thessel',
  strip: 'Pellorin Duskar',
  tow: 'Hobrand Mulligar',
  autocross: 'Tovrik Pim',
  classic: 'Ondrey Salvane',
  used: 'Lumeck Farro',
  second: 'Ardvane Corrit',
  trip: 'Velmora Quist',
};

/** Names of the sets, tools and people, likewise. */
const PIECES: Record<string, string> = {
  circuitSet: 'Circuit tyres, white mark',
  roadSet: 'Road and rain tyres, blue mark',
  autocrossSet: 'Autocross tyres, soft',
  pads: 'Front pads, circuit compound',
  lift: 'Four-post lift',
  torqueWrench: 'Torque wrench, 40 to 200 N·m',
  extinguisher: 'Extinguisher by the door',
  oda: 'Oda',
  tam: 'Tam',
};

const MOST_TAPS = 3;

// The words of the screens, formed here from the figures that were worked out by hand.
const number = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 1 });
const whole = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 });
const longDay = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' });
const day = (iso: string) => longDay.format(new Date(`${iso}T00:00:00Z`));
const daysFrom = (iso: string, days: number) =>
  new Date(Date.parse(`${iso}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
const counted = (count: number, one: string) =>
  `${number.format(count)} ${one}${count === 1 ? '' : 's'}`;

function amountWords(amount: number, unit: string): string {
  if (unit === 'km' || unit === 'mi') return `${whole.format(amount)} ${unit}`;
  return unit === 'h' ? `${number.format(amount)} h` : `${number.format(amount)} ${unit}`;
}

/** Each figure of a fact in the words that must stand on the screen beside its `text`. */
function wordsOf(fact: Fact): string[] {
  const wanted: Expect = fact.expect;
  const { unit = '', amount, limit, reached, due, remainingDays, severeThreshold } = wanted;
  const words = [fact.text];
  if (amount !== undefined) words.push(`${amountWords(amount, unit)} counted`);
  if (amount !== undefined && limit !== undefined)
    words.push(`The limit is ${amountWords(limit, unit)}.`);
  if (reached !== undefined) words.push(`It was reached on ${day(reached)}.`);
  if (due !== undefined) words.push(`good through ${day(due)}`);
  if (remainingDays !== undefined)
    words.push(
      remainingDays < 0
        ? `${counted(-remainingDays, 'day')} ago`
        : `${counted(remainingDays, 'day')} left`,
    );
  if (wanted.severe) words.push('schedule for hard use');
  if (severeThreshold !== undefined) words.push(`From ${severeThreshold} sessions on`);
  if (wanted.severeSince !== undefined) words.push(day(wanted.severeSince));
  if (wanted.reading !== undefined && wanted.onOffset !== undefined)
    words.push(day(daysFrom(expected.asOf, wanted.onOffset)));
  if (wanted.added) words.push('added since');
  if (wanted.laidUpSince !== undefined) words.push(`since ${day(wanted.laidUpSince)}`);
  return words;
}

const rowOf = (page: Page, fact: Fact): Locator =>
  page.getByRole('listitem').filter({
    has: page.getByRole('heading', { level: 2, name: CARS[fact.car] ?? '', exact: true }),
  });

async function openCar(page: Page, fact: Fact, taps: Taps): Promise<void> {
  await taps.on(rowOf(page, fact).getByRole('link', { name: CARS[fact.car] ?? '' }));
  await page.waitForURL(/\/car\/[\da-f-]{36}$/);
  await expect(page.getByRole('heading', { name: 'History' })).toBeVisible();
}

/** Where a person looks for a fact, and how they come there. */
async function reach(page: Page, fact: Fact, taps: Taps): Promise<Locator> {
  if (fact.where === 'garage') return rowOf(page, fact);
  if ('piece' in fact && fact.piece !== undefined)
    return reachPiece(page, fact.piece, fact.item, taps);
  await openCar(page, fact, taps);
  if (fact.where === 'history') return reachEntry(page, fact, taps);
  if (fact.item === 'odometer' || fact.item === 'oil level')
    return page.getByRole('region', { name: 'Readings' });
  return openWhy(page, fact.item, taps);
}

/** A set, a tool or a person: its page, and there its life or an item. */
async function reachPiece(page: Page, piece: string, item: string, taps: Taps): Promise<Locator> {
  await taps.on(page.getByRole('link', { name: 'Sets, tools and people' }));
  const name = PIECES[piece] ?? '';
  await taps.on(page.getByRole('link', { name, exact: true }));
  await page.waitForURL(/\/gear\/[\da-f-]{36}$/);
  if (item !== 'life') return openWhy(page, item, taps);
  return page.getByRole('main');
}

async function openWhy(page: Page, name: string, taps: Taps): Promise<Locator> {
  const item = page
    .getByRole('region', { name: 'Items' })
    .getByRole('listitem')
    .filter({
      has: page.getByRole('heading', { level: 3, name, exact: true }),
    });
  await taps.on(item.getByRole('button', { name: `Why: ${name}`, exact: true }));
  return item;
}

async function reachEntry(page: Page, fact: Fact, taps: Taps): Promise<Locator> {
  const wanted: Expect = fact.expect;
  const [id = ''] = fact.evidence;
  if (wanted.removed) await taps.on(page.getByRole('checkbox', { name: 'Removed ones too' }));
  const found = wanted.amended || wanted.removed ? 'History' : 'Entries to mend';
  return page
    .getByRole('region', { name: found })
    .getByRole('listitem')
    .filter({ has: page.locator(`a[href$="/entry/${id}"]`) })
    .first();
}

for (const fact of expected.facts)
  test(`the screens say, at most ${MOST_TAPS} taps from the garage: ${fact.id}`, async ({
    page,
    baseURL,
  }) => {
    await page.goto(await demoGarageOf(page, baseURL ?? ''));
    const taps = new Taps();
    const place = await reach(page, fact, taps);
    for (const words of wordsOf(fact)) await expect(place).toContainText(words);
    const { overdueItems, amended, removed }: Expect = fact.expect;
    if (overdueItems !== undefined)
      await expect(place.getByText('Overdue')).toHaveCount(overdueItems);
    if (amended) await expect(place).toContainText('Amended once');
    if (removed) await expect(place).toContainText('Removed');
    expect(taps.count).toBeLessThanOrEqual(MOST_TAPS);
  });
