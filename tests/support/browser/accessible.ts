import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** Holds a page, as it stands now, to every rule of axe (WCAG 2.2 A and AA, and good practice). */
export async function expectAccessible(page: Page, what: string): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  const found = violations.map(({ id, help, nodes }) => ({
    rule: `${id}: ${help}`,
    where: nodes.slice(0, 3).map(({ html, failureSummary }) => ({
      html: html.slice(0, 160),
      summary: failureSummary?.slice(0, 300),
    })),
  }));
  expect(found, what).toEqual([]);
}
