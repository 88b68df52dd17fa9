import path from 'node:path';
import { test } from '@playwright/test';
import { chooseLook, LOOKS } from '../../support/browser/choose-look.ts';
import { demoGarageOf } from '../../support/browser/demo.ts';
import { EVERY_SCREEN, SLOW_MS, visit } from '../../support/browser/every-screen.ts';

// Pictures for people to look at: SCREENS_DIR=FOLDER npx playwright test demo/screens
const folder = process.env.SCREENS_DIR;

if (folder !== undefined)
  for (const screen of EVERY_SCREEN)
    test(`a picture of "${screen.name}" in each look`, async ({ page, baseURL }) => {
      if (screen.slow) test.setTimeout(SLOW_MS);
      await visit(page, await demoGarageOf(page, baseURL ?? ''), screen);
      const width = page.viewportSize()?.width;
      for (const look of LOOKS) {
        await chooseLook(page, look);
        const file = `${screen.name.replace(/\W+/g, '-')}-${width}-${look}.png`;
        await page.screenshot({ path: path.join(folder, file), fullPage: true });
      }
    });
