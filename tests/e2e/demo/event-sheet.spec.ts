import { expect, type Page, test } from '@playwright/test';
import { demoEvent, demoGarageOf } from '../../support/browser/demo.ts';
import { type PrintedPage, pagesOf, popplerIsHere } from '../../support/pdf.ts';

// where the program that reads a PDF back may be installed, `npm test` has installed it
test.skip(!popplerIsHere, 'poppler-utils is missing: apt-get install poppler-utils');

const CIRCUIT_DAY = 2;
const CARS = 4;
/** in points: ISO 216, and ANSI Y14.1 size A */
const PAPERS = [
  { name: 'A4', widthPt: (210 / 25.4) * 72, heightPt: (297 / 25.4) * 72 },
  { name: 'US Letter', widthPt: 8.5 * 72, heightPt: 11 * 72 },
] as const;

async function openSheet(page: Page, origin: string): Promise<void> {
  const garage = await demoGarageOf(page, origin);
  await page.goto(`${garage}/events/${demoEvent(CIRCUIT_DAY)}/sheet`);
  await page.locator('html[data-alive]').waitFor({ state: 'attached' });
}

const print = async (page: Page): Promise<PrintedPage[]> =>
  pagesOf(await page.pdf({ preferCSSPageSize: true }));

const bare = (text: string) => text.replace(/\s+/g, '');

function expectStamped({ text }: PrintedPage): void {
  expect(text).toMatch(/Worked out 15 June 2026, \d\d:\d\d \(Europe\/Berlin\)\./);
  expect(text).toContain('Void after any entry.');
  expect(text).toContain('it advises and certifies nothing');
}

for (const paper of PAPERS)
  test(`the sheet of a circuit day is printed on ${paper.name}, a page a car and then the work, nothing cut`, async ({
    page,
    baseURL,
  }) => {
    await openSheet(page, baseURL ?? '');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^4 cars, a page each/);
    await page.getByRole('radio', { name: paper.name }).click();
    const printed = await print(page);
    // a long list of work takes a second sheet
    expect(printed.length).toBeGreaterThanOrEqual(CARS + 1);
    for (const one of printed) {
      expect(Math.abs(one.widthPt - paper.widthPt)).toBeLessThan(1);
      expect(Math.abs(one.heightPt - paper.heightPt)).toBeLessThan(1);
      expectStamped(one);
      // what is only for the screen stays there
      for (const unprinted of ['US Letter', 'What is due', 'Settings'])
        expect(one.text).not.toContain(unprinted);
    }
    const shown = page.locator('section[aria-labelledby]:has(> footer)');
    await expect(shown).toHaveCount(CARS + 1);
    const [cars, work] = [printed.slice(0, CARS), printed.slice(CARS)];
    const texts = [...cars.map(({ text }) => text), work.map(({ text }) => text).join(' ')];
    for (const [at, text] of texts.entries()) {
      const parts = shown.nth(at).locator('h2, h3, dt, dd, th, td, li, p');
      for (const words of await parts.allInnerTexts())
        expect(bare(text), `page ${at + 1}`).toContain(bare(words));
    }
    await expect(shown.first()).toContainText('by the log');
  });

test('a page that is longer than the paper has its car, its time and its end of validity on each sheet', async ({
  page,
  baseURL,
}) => {
  await openSheet(page, baseURL ?? '');
  const car = (await page.getByRole('heading', { level: 2 }).first().textContent()) ?? '';
  await page.evaluate(`(() => {
    const [list] = document.querySelectorAll('section ul');
    for (let line = 0; line < 60; line += 1) {
      const made = document.createElement('li');
      made.textContent = 'Another line ' + line;
      list.append(made);
    }
  })()`);
  const printed = await print(page);
  expect(printed).toHaveLength(CARS + 2);
  printed.forEach(expectStamped);
  expect(printed[0]?.text).toContain(car);
  expect(printed[1]?.text).toContain(car);
  const lines = bare(`${printed[0]?.text}${printed[1]?.text}`);
  for (let line = 0; line < 60; line += 1) expect(lines).toContain(`Anotherline${line}`);
});
