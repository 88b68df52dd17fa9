import { expect, type Page } from '@playwright/test';
import { save, unfold } from '../../support/browser/forms.ts';
import { type OwnGarage, test } from '../../support/browser/garage-test.ts';

type Kind = {
  kind: string;
  /** fills the form of a new one */
  fill: (page: Page) => Promise<void>;
  /** what its line in the history says then */
  says: string | RegExp;
  /** what is put right in it, and what its line says then */
  amend: (page: Page) => Promise<void>;
  saysThen: string | RegExp;
};

const press = (page: Page, name: string | RegExp) => page.getByRole('radio', { name }).click();
const write = (page: Page, name: string | RegExp, text: string) =>
  page.getByRole('textbox', { name }).fill(text);

/** Kinds that need nothing beside the car. */
const KINDS: readonly Kind[] = [
  {
    kind: 'fluid',
    fill: async (page) => {
      await press(page, 'Coolant');
      await press(page, 'At MIN');
      await write(page, /^Added/, '0,4');
    },
    says: /Coolant, At MIN, 0,4 L/,
    amend: (page) => press(page, 'Below MIN'),
    saysThen: /Coolant, Below MIN, 0,4 L/,
  },
  {
    kind: 'wheels',
    fill: async (page) => {
      await press(page, 'Tightened to torque');
      await write(page, /^Torque/, '120');
      await page.getByRole('checkbox', { name: 'Wheels and brakes were cold' }).click();
    },
    says: /tightened to torque, 120 Nm, cold/,
    amend: async (page) => {
      await page.getByRole('checkbox', { name: 'Front left' }).click();
      await page.getByRole('checkbox', { name: 'Front right' }).click();
    },
    saysThen: /tightened to torque.*rear left and rear right.*120 Nm/,
  },
  {
    kind: 'inspection',
    fill: async (page) => {
      await press(page, 'Scrutineering');
      await press(page, 'Passed');
      await page.getByLabel(/^Good through/).fill('2027-04-30');
    },
    says: /Scrutineering, passed, good through 30 April 2027/,
    amend: (page) => press(page, 'Failed'),
    saysThen: /Scrutineering, failed/,
  },
  {
    kind: 'measure',
    fill: async (page) => {
      await unfold(page, 'Brake pads');
      const frontLeft = page.getByRole('group', { name: 'Front left' });
      await frontLeft.getByRole('textbox', { name: 'Inner' }).fill('7,5');
      await frontLeft.getByRole('textbox', { name: 'Outer' }).fill('8');
    },
    says: /pad front left inner 7,5 mm, pad front left outer 8 mm/,
    amend: async (page) => {
      await unfold(page, 'Battery, brake fluid');
      await write(page, /^Battery/, '12.6');
    },
    saysThen: /pad front left outer 8 mm, battery 12.6 V/,
  },
  {
    kind: 'finding',
    fill: async (page) => {
      await write(page, 'What you found', 'Weeping boot');
      await press(page, 'Rear left');
      await press(page, /^Watch/);
    },
    says: /Weeping boot, rear left, watch/,
    amend: (page) => press(page, /^Before hard use/),
    saysThen: /Weeping boot, rear left, before hard use/,
  },
  {
    kind: 'incident',
    fill: async (page) => {
      await press(page, /^Overheating/);
      await write(page, /^In a few words/, 'last lap');
    },
    says: /overheating, last lap/,
    amend: (page) => press(page, /^Warning lamp/),
    saysThen: /warning lamp, last lap/,
  },
  {
    kind: 'repair',
    fill: async (page) => {
      await write(page, 'What was repaired', 'Turbocharger seals');
      await page.getByRole('checkbox', { name: /^It may change/ }).click();
    },
    says: 'Turbocharger seals',
    amend: (page) => write(page, 'What was repaired', 'Breather hose'),
    saysThen: 'Breather hose',
  },
  {
    kind: 'meterReplaced',
    fill: async (page) => {
      await write(page, /^The old one showed last/, '88 000');
      await write(page, 'The new one shows first', '5');
    },
    says: /old one last at 88 000 km, new one first at 5 km/,
    amend: (page) => write(page, 'The new one shows first', '7'),
    saysThen: /new one first at 7 km/,
  },
  {
    kind: 'labReport',
    fill: async (page) => {
      await write(page, /^Laboratory/, 'The bench');
      await write(page, 'What', 'iron, ppm');
      await write(page, 'Figure', '12.5');
    },
    says: /The bench, iron, ppm 12.5/,
    amend: async (page) => {
      await page.getByRole('button', { name: 'Another figure' }).click();
      await page.getByRole('textbox', { name: 'What' }).last().fill('copper');
      await page.getByRole('textbox', { name: 'Figure' }).last().fill('3');
    },
    saysThen: /copper 3, iron, ppm 12.5/,
  },
  {
    kind: 'handover',
    fill: async (page) => {
      await press(page, 'Lent');
      await write(page, /^From or to whom/, 'Tam');
    },
    says: 'lent to Tam',
    amend: (page) => press(page, 'Came back'),
    saysThen: /(returned|came back).*Tam/,
  },
  {
    kind: 'layUp',
    fill: async (page) => {
      await page.getByRole('checkbox', { name: 'Battery: disconnected' }).click();
      await write(page, /^Keys are at/, 'the hook');
    },
    says: /keys: the hook/,
    amend: (page) => page.getByLabel(/^Planned until/).fill('2026-11-01'),
    saysThen: /until 1 November 2026.*keys: the hook/,
  },
];

const history = (page: Page) => page.getByRole('region', { name: 'History' });

/** Recorded, seen, put right, and put back. */
async function throughItsLife(page: Page, garage: OwnGarage, one: Kind): Promise<void> {
  await page.goto(garage.record(one.kind));
  await one.fill(page);
  await save(page);
  await expect(history(page)).toContainText(one.says);
  const [stored] = await garage.log();
  expect(stored?.entry.kind).toBe(one.kind);
  await page.goto(`${garage.home()}/entry/${stored?.entry.id}/amend`);
  await one.amend(page);
  await save(page);
  await expect(history(page)).toContainText(one.saysThen);
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await expect(page.getByText('Undone.')).toBeVisible();
  await expect(history(page)).toContainText(one.says);
  const [back] = await garage.log();
  expect(back?.entry).toEqual(stored?.entry);
}

for (const one of KINDS)
  test(`an entry of the kind ${one.kind} is recorded, amended and put back`, async ({
    page,
    garage,
  }) => {
    await throughItsLife(page, garage, one);
  });

test('what was done at lay-up is asked for at wake-up, ticked by hand alone', async ({
  page,
  garage,
}) => {
  await garage.write({
    kind: 'layUp',
    on: '2026-06-01',
    lines: [
      { what: 'Battery', how: 'disconnected' },
      { what: 'Exhaust openings', how: 'plugged' },
    ],
  });
  await garage.counted();
  await throughItsLife(page, garage, {
    kind: 'wakeUp',
    fill: async () => {
      const battery = page.getByRole('checkbox', { name: 'Battery: disconnected' });
      await expect(battery).not.toBeChecked();
      await battery.click();
    },
    says: /Wake-up/,
    amend: async () => {
      await expect(page.getByRole('checkbox', { name: 'Battery: disconnected' })).toBeChecked();
      await page.getByRole('checkbox', { name: 'Exhaust openings: plugged' }).click();
    },
    saysThen: /Wake-up/,
  });
  const [woken] = await garage.log();
  expect(woken?.entry).toMatchObject({ lines: [{ what: 'Battery', how: 'disconnected' }] });
});

test('an incident is answered from its own page, its list ticked off', async ({ page, garage }) => {
  const { id } = await garage.write({ kind: 'incident', what: 'overheating' });
  await garage.counted();
  await page.goto(`${garage.home()}/entry/${id}`);
  await page.getByRole('link', { name: 'Answer it' }).click();
  await page.getByRole('checkbox', { name: /^Coolant level/ }).click();
  await write(page, 'What was done about it', 'Hose renewed, bled, no leak.');
  await save(page);
  const [answer] = await garage.logOf(2);
  expect(answer?.entry).toMatchObject({
    kind: 'answer',
    notice: id,
    answer: 'Hose renewed, bled, no leak.',
    checked: ['Coolant level, and where it went'],
  });
  await page.goto(`${garage.home()}/entry/${answer?.entry.id}/amend`);
  await write(page, 'What was done about it', 'Hose renewed.');
  await save(page);
  await expect(history(page)).toContainText('Hose renewed.');
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await expect(history(page)).toContainText('Hose renewed, bled, no leak.');
});
