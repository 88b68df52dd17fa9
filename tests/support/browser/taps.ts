import type { Locator } from '@playwright/test';

/** Reaches things as a thumb does and counts how often it has to. */
export class Taps {
  count = 0;

  async on(target: Locator): Promise<void> {
    this.count += 1;
    await target.click();
  }
}
