import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** The rules of axe that read colours and sizes; all others read the markup, which no look changes. */
const OF_LOOKS = ['color-contrast', 'link-in-text-block', 'target-size'];

/** Holds a page, as it stands now, to every rule of axe (WCAG 2.2 A and AA, and good practice). */
export function expectAccessible(page: Page, what: string): Promise<void> {
  return expectNothing(new AxeBuilder({ page }), what);
}

/** The same for a page that was held to every rule in another look: what a look can change. */
export function expectReadable(page: Page, what: string): Promise<void> {
  return expectNothing(new AxeBuilder({ page }).withRules(OF_LOOKS), what);
}

/** Around a letter stands the mail program, which has landmarks of its own: a second "main" would be one too many. */
const OF_WHOLE_PAGES = ['landmark-one-main', 'region'];

/** Holds a letter, as a mailbox shows it, to every rule of axe but those that ask for landmarks. */
export function expectLetterAccessible(page: Page, what: string): Promise<void> {
  return expectNothing(new AxeBuilder({ page }).disableRules(OF_WHOLE_PAGES), what);
}

async function expectNothing(axe: AxeBuilder, what: string): Promise<void> {
  const { violations } = await axe.analyze();
  const found = violations.map(({ id, help, nodes }) => ({
    rule: `${id}: ${help}`,
    where: nodes.slice(0, 3).map(({ html, failureSummary }) => ({
      html: html.slice(0, 160),
      summary: failureSummary?.slice(0, 300),
    })),
  }));
  expect(found, what).toEqual([]);
}
