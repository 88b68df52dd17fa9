/** One mailbox; `address` is plain, `name` may hold any letters. */
export type Mailbox = { name?: string; address: string };

/** A letter to one person, as it was composed: sent again it is the same, byte for byte. */
export type Letter = {
  from: Mailbox;
  to: Mailbox;
  subject: string;
  text: string;
  html: string;
  /** with its angle brackets; kept by every further try, so that a mailbox can tell the second copy */
  messageId: string;
  /** the instant of composing */
  date: Date;
  /** address that takes a letter's reader off the list by one POST (RFC 8058) */
  unsubscribeUrl?: string;
  headers?: Readonly<Record<string, string>>;
};

// dots inside, no route, no comment, no list: one mailbox and nothing else
const ADDRESS = /^[^\s<>()[\]\\,;:"@]{1,64}@[^\s<>()[\]\\,;:"@]{1,255}$/u;
const MESSAGE_ID = /^<[A-Za-z0-9!#$%&'*+/=?^_`{|}~.-]+@[A-Za-z0-9.-]+>$/;
const HEADER_NAME = /^[A-Za-z][A-Za-z0-9-]*$/;
const CONTROL = /[\p{Cc}\p{Zl}\p{Zp}]/u;
/** What the letter's own fields say; a second one would contradict them. */
const OWN = /^(from|to|cc|bcc|sender|subject|date|message-id|mime-version|content-.*|list-.*)$/i;

/** @throws RangeError naming what of the letter cannot be sent; addresses are not repeated */
export function checkLetter(letter: Letter): void {
  for (const which of ['from', 'to'] as const) {
    if (!ADDRESS.test(letter[which].address))
      throw new RangeError(`cannot send: the address of "${which}" should be one plain mailbox`);
    checkLine(`the name of "${which}"`, letter[which].name ?? '');
  }
  checkLine('the subject', letter.subject);
  if (!MESSAGE_ID.test(letter.messageId) || letter.messageId.length > 250)
    throw new RangeError('cannot send: the Message-ID should look like <letter.1@host>');
  if (Number.isNaN(letter.date.getTime()))
    throw new RangeError('cannot send: the date is no instant');
  for (const [name, value] of Object.entries(letter.headers ?? {})) {
    if (!HEADER_NAME.test(name) || OWN.test(name))
      throw new RangeError(`cannot send: ${JSON.stringify(name)} is no header of its own`);
    checkLine(`the header ${name}`, value);
  }
}

function checkLine(what: string, text: string): void {
  if (CONTROL.test(text)) throw new RangeError(`cannot send: ${what} should be one line`);
}

/**
 * The headers by which a mail program offers to unsubscribe with one press (RFC 8058, 3.1): one HTTPS
 * address, and the sign that a POST to it suffices. Receivers heed them only under a DKIM signature, which
 * is the mail server's to make.
 *
 * @throws RangeError where the address is no https one or holds what would end the header
 */
export function unsubscribeHeaders(url: string): Record<string, string> {
  if (!URL.canParse(url) || new URL(url).protocol !== 'https:' || !/^[\x21-\x7E]+$/.test(url))
    throw new RangeError('cannot offer to unsubscribe: the address should begin with https://');
  if (/[<>,"]/.test(url))
    throw new RangeError('cannot offer to unsubscribe: the address should be percent-encoded');
  return {
    'List-Unsubscribe': `<${url}>`,
    'List-Unsubscribe-Post': 'List-Unsubscribe=One-Click',
  };
}
