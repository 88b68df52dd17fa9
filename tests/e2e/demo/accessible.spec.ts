import { expect, test } from '@playwright/test';
import { expectAccessible, expectReadable } from '../../support/browser/accessible.ts';
import { chooseLook, LOOKS } from '../../support/browser/choose-look.ts';
import { demoGarageOf } from '../../support/browser/demo.ts';
import { EVERY_SCREEN, SLOW_MS, visit } from '../../support/browser/every-screen.ts';

for (const screen of EVERY_SCREEN)
  test(`the screen "${screen.name}" keeps every rule of axe in each look, and nothing is cut off`, async ({
    page,
    baseURL,
  }) => {
    if (screen.slow) test.setTimeout(SLOW_MS);
    await visit(page, await demoGarageOf(page, baseURL ?? ''), screen);
    await expect(page).toHaveTitle(/Quartermark$/);
    const [first, ...others] = LOOKS;
    await chooseLook(page, first);
    await expectAccessible(page, `${screen.name} in ${first}`);
    for (const look of others) {
      await chooseLook(page, look);
      await expectReadable(page, `${screen.name} in ${look}`);
    }
    const width = await page.evaluate<number>('document.documentElement.scrollWidth');
    expect(width, 'the page is wider than the screen').toBeLessThanOrEqual(
      page.viewportSize()?.width ?? 0,
    );
  });
