import { expect, type Page } from '@playwright/test';
import { expectAccessible } from '../../support/browser/accessible.ts';
import { unfold } from '../../support/browser/forms.ts';
import { type OwnGarage, test } from '../../support/browser/garage-test.ts';

const circuit = { kind: 'session', use: 'circuit' } as const;
const piece = (garage: OwnGarage, id: string) => `${garage.home()}/gear/${id}`;

async function measurePads(page: Page, on: string, inner: string, outer: string) {
  await page.getByRole('link', { name: 'Measure', exact: true }).click();
  await page.waitForURL(/\/record\/.*measure/);
  await unfold(page, 'Day, time and note');
  await page.getByLabel('Day', { exact: true }).fill(on);
  const frontLeft = page.getByRole('group', { name: 'Front left' });
  await frontLeft.getByRole('textbox', { name: 'Inner' }).fill(inner);
  await frontLeft.getByRole('textbox', { name: 'Outer' }).fill(outer);
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.waitForURL((url) => !url.pathname.includes('/record/'));
}

test('pads that are measured twice say how many sessions they have left, to whose minimum', async ({
  page,
  garage,
}) => {
  const pads = await garage.keep({
    kind: 'component',
    sort: 'pads',
    name: 'Front pads, track',
    condition: 'new',
  });
  await garage.write({ kind: 'fit', component: pads, change: 'on', on: '2026-05-01' });
  await garage.write({ ...circuit, sessions: 4, on: '2026-05-09' });
  await page.goto(piece(garage, pads));
  await measurePads(page, '2026-05-10', '9.4', '9.8');

  await page.goto(piece(garage, pads));
  const wear = page.getByRole('region', { name: 'How it wears' });
  await expect(wear).toContainText(
    'Front left inner pad 9.4 mm, measured 10 May 2026; no rate yet: measure once more after some use.',
  );
  await expectAccessible(page, 'pads measured once');

  // 1.6 mm in 4 sessions: 0.4 a session, and 4.8 mm above 3 mm last 12
  await garage.write({ ...circuit, sessions: 4, on: '2026-06-06' });
  await page.goto(piece(garage, pads));
  await expect(wear).toContainText('4 sessions ago');
  await measurePads(page, '2026-06-07', '7.8', '8.8');
  await page.goto(piece(garage, pads));
  await expect(wear).toContainText(
    /Front left inner pad likely 7\.8 mm now, about 0\.4 mm a session; 3 mm \(common practice\) in about (11|12) sessions, could be as few as \d/,
  );
  await expect(wear).toContainText('Rough, so far: measure again after more use.');
  const table = wear.getByRole('table');
  await expect(table.getByRole('rowheader', { name: /^Front left outer pad/ })).toBeVisible();
  await expect(table).toContainText('about 0.25 mm a session');
  await expectAccessible(page, 'pads with a rate');

  await page.getByRole('link', { name: 'Change', exact: true }).click();
  await page.getByRole('textbox', { name: 'Your own least thickness' }).fill('7');
  await page.getByRole('textbox', { name: 'Thickness when new' }).fill('6');
  await page.getByRole('button', { name: 'Save the change' }).click();
  await expect(
    page.getByRole('textbox', { name: 'Thickness when new' }),
  ).toHaveAccessibleDescription(/New is not more than your own least/);
  await page.getByRole('textbox', { name: 'Thickness when new' }).fill('11');
  await page.getByRole('button', { name: 'Save the change' }).click();
  await page.waitForURL(new RegExp(`/gear/${pads}$`));
  await expect(wear).toContainText(/7 mm \(your own value\) in about [12] sessions?/);
  await expect(page.getByRole('heading', { level: 1 })).toContainText(
    'front left inner pad at 7 mm (your own value)',
  );

  await page.goto(`${garage.home()}/gear`);
  const row = page.getByRole('listitem').filter({ hasText: 'Front pads, track' });
  await expect(row).toContainText('Wear: Due soon, front left inner pad at 7 mm');
});

test('a measurement that rises is said and mended, and new pads start afresh', async ({
  page,
  garage,
}) => {
  const pads = await garage.keep({
    kind: 'component',
    sort: 'pads',
    name: 'Front pads',
    condition: 'new',
  });
  const inner = (text: string) => ({
    pads: [{ corner: 'frontLeft' as const, inner: { text, unit: 'mm' as const } }],
  });
  const measured = (on: string, text: string) =>
    garage.write({ kind: 'measure', component: pads, on, ...inner(text) });
  await garage.write({ kind: 'fit', component: pads, change: 'on', on: '2026-05-01' });
  await garage.write({ ...circuit, sessions: 4, on: '2026-05-09' });
  await measured('2026-05-10', '5');
  await garage.write({ ...circuit, sessions: 4, on: '2026-05-23' });
  await measured('2026-05-24', '9.5');
  await page.goto(piece(garage, pads));
  const wear = page.getByRole('region', { name: 'How it wears' });
  await expect(wear).toContainText(
    'Front left inner pad rose from 5 mm (10 May 2026) to 9.5 mm (24 May 2026)',
  );
  await expect(wear.getByRole('table')).toContainText('not known');
  await expectAccessible(page, 'pads that rose');

  await garage.write({
    kind: 'fit',
    component: pads,
    change: 'on',
    condition: 'new',
    on: '2026-05-20',
  });
  await page.reload();
  await expect(wear).toContainText(
    'Front left inner pad 9.5 mm, measured 24 May 2026; no rate yet',
  );
});
