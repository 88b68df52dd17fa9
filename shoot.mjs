import { chromium } from '@playwright/test';
const [url, ...shots] = process.argv.slice(2);
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, timezoneId: 'Europe/London', locale: 'en-GB' });
const page = await context.newPage();
await page.goto(url);
if (url.includes('start?token')) {
  await page.getByRole('button', { name: /Open the demo garage/ }).click();
  await page.waitForURL(/\/g\//, { timeout: 60000 });
}
const home = page.url();
console.log(home);
await context.storageState({ path: '/tmp/road-state.json' });
await page.waitForTimeout(15000);
const one = async (name, path, act) => {
  for (const width of [360, 1280]) {
    await page.setViewportSize({ width, height: width === 360 ? 760 : 800 });
    await page.goto(path.startsWith('/') ? new URL(path, home).href : home + (path ? '/' + path : ''));
    await page.locator('html[data-alive]').waitFor({ state: 'attached' });
    await page.waitForTimeout(1500);
    if (act) await act(page);
    await page.screenshot({ path: `/tmp/road-${name}-${width}.png`, fullPage: false });
  }
};
const car = (n) => `car/01900000-0000-700${n}-a000-000000000000`;
const fold = async (p) => { const s = p.locator('summary').filter({ hasText: 'What the road asks' }); if (await s.count()) { await s.click(); await p.waitForTimeout(500); } };
await one('garage', '');
await one('car1', car(1));
await one('car1-fold', car(1), async (p) => { await fold(p); await p.locator('summary').filter({ hasText: 'What the road asks' }).scrollIntoViewIfNeeded().catch(() => {}); });
await one('car2', car(2));
await one('pocket', '/pocket');
await browser.close();
