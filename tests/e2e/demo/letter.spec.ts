import { expect, test } from '@playwright/test';
import {
  compose,
  factsOfCar,
  htmlPart,
  linkAddress,
  SETTINGS_USUAL,
  textPart,
} from '@quartermark/digest';
import { AddressPolicy, readAllowedPlaces, readAllowedPorts, sendLetter } from '@quartermark/post';
import { simpleParser } from 'mailparser';
import { HOLLOW_LANE, hollowLaneOn } from '../../../packages/digest/test/hollow-lane.ts';
import { expectLetterAccessible } from '../../support/browser/accessible.ts';
import { MailServerProcess } from '../../support/mail-server.ts';

// a night of six lines: one that forbids driving, overdue ones and ones that are due soon
const TODAY = '2026-06-15';

/** A letter as a mailbox has it: composed, handed to a real mail server, and read back. */
async function delivered() {
  const facts = hollowLaneOn(TODAY).flatMap((car) => factsOfCar(car, TODAY));
  const asked = { last: [], settings: SETTINGS_USUAL, garage: HOLLOW_LANE };
  const letter = compose({ today: TODAY, facts, ...asked, member: { cars: 'all' } });
  if (letter === null) throw new Error('there is nothing to tell');
  const linkOf = linkAddress('https://garage.example', '11111111-1111-4111-8111-111111111111');
  const server = await MailServerProcess.start();
  const ports = readAllowedPorts(`smtp:${server.port}`);
  const outcome = await sendLetter(
    new AddressPolicy(readAllowedPlaces('127.0.0.1'), ports),
    { host: '127.0.0.1', port: server.port, encryption: 'ifOffered' },
    {
      from: { address: 'garage@house.example' },
      to: { address: 'owner@house.example' },
      subject: letter.subject,
      text: textPart(letter, linkOf),
      html: htmlPart(letter, linkOf),
      messageId: '<letter.1@house.example>',
      date: new Date(`${TODAY}T05:00:00Z`),
    },
  );
  expect(outcome.is).toBe('accepted');
  const [handed] = await server.heard(1);
  await server.stop();
  return { letter, mail: await simpleParser(handed?.mail ?? '') };
}

for (const colorScheme of ['light', 'dark'] as const)
  test(`a letter that arrived reads well in a ${colorScheme} mailbox, and fetches nothing`, async ({
    page,
  }) => {
    const { letter, mail } = await delivered();
    const fetched: string[] = [];
    page.on('request', (request) => fetched.push(request.url()));
    await page.emulateMedia({ colorScheme });
    await page.setContent(String(mail.html));
    await expect(page.getByRole('heading')).toHaveText(letter.heading);
    await expect(page.getByRole('listitem')).toHaveCount(letter.lines.length);
    for (const { word, text } of letter.lines) {
      await expect(page.getByRole('listitem').filter({ hasText: text })).toContainText(word);
      expect(mail.text?.replace(/\s+/g, ' ')).toContain(`${word}. ${text}.`);
    }
    // a string: tests are typed without a browser's own names
    const beyond = 'document.documentElement.scrollWidth - document.documentElement.clientWidth';
    expect(await page.evaluate(beyond)).toBe(0);
    // the mailbox's own ink, on its own paper
    const ink = colorScheme === 'dark' ? 'rgb(255, 255, 255)' : 'rgb(0, 0, 0)';
    await expect(page.locator('body')).toHaveCSS('color', ink);
    expect(fetched).toEqual([]);
    await expectLetterAccessible(page, `a letter in a ${colorScheme} mailbox`);
  });
