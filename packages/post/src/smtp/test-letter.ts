import type { Letter, Mailbox } from './letter.ts';

/** A letter that says no more than that letters arrive. */
export function testLetter(is: {
  from: Mailbox;
  to: Mailbox;
  messageId: string;
  date: Date;
}): Letter {
  const said = 'Letters from Quartermark reach this mailbox. Nothing needs to be done.';
  return {
    ...is,
    subject: 'Test letter from Quartermark',
    text: `${said}\n`,
    html: `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="color-scheme" content="light dark"><title>Test letter</title></head><body><p>${said}</p></body></html>\n`,
  };
}
