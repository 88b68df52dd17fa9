import { createHash } from 'node:crypto';
import { PassThrough } from 'node:stream';
import { createTransport, type SentMessageInfo } from 'nodemailer';
import { connectTo, within } from '../address-policy/connect.ts';
import { type AddressPolicy, AddressRefused } from '../address-policy/policy.ts';
import type { Outcome } from '../outcome.ts';
import { cleanWords, networkWords } from '../words.ts';
import { checkLetter, type Letter, unsubscribeHeaders } from './letter.ts';

export type MailServer = {
  host: string;
  port: number;
  /**
   * `implicit`: encrypted from the first byte (usual on 465); `required`: by STARTTLS or not at all;
   * `ifOffered`: by STARTTLS where the server offers it. A login is never sent in the clear.
   */
  encryption: 'implicit' | 'required' | 'ifOffered';
  login?: { user: string; password: string };
  /** PEM text of an authority to trust besides the system's */
  trustedAuthority?: string;
};

/** Longest waits, ms: for the name and the connection, and for each answer after that. */
const CONNECT_MS = 15_000;
const ANSWER_MS = 60_000;
/** A letter as a whole may take as long as this many answers: a server could drip for ever. */
const LETTER_ANSWERS = 5;

/**
 * Hands a letter to a mail server. Nothing of it is logged.
 *
 * @param answerMs longest wait for one answer of the server
 * @throws RangeError where the letter itself cannot be sent (see `checkLetter`); what the world does
 *   wrong is an outcome
 */
export async function sendLetter(
  policy: AddressPolicy,
  server: MailServer,
  letter: Letter,
  answerMs = ANSWER_MS,
): Promise<Outcome> {
  const message = messageOf(letter);
  const progress = { handedOver: false };
  try {
    const destination = await within(
      CONNECT_MS,
      policy.destination('smtp', server.host, server.port),
    );
    const connection = await connectTo(destination, CONNECT_MS);
    const { login, encryption } = server;
    const transport = createTransport({
      // already open, to the address that was looked at: the name is for TLS alone
      connection,
      host: destination.host,
      port: destination.port,
      secure: encryption === 'implicit',
      requireTLS: encryption === 'required' || (login !== undefined && encryption !== 'implicit'),
      ...(login && { auth: { user: login.user, pass: login.password } }),
      tls: {
        minVersion: 'TLSv1.2',
        ...(server.trustedAuthority && { ca: server.trustedAuthority }),
      },
      greetingTimeout: answerMs,
      socketTimeout: answerMs,
      connectionTimeout: CONNECT_MS,
      logger: false,
    });
    transport.use('stream', (mail, done) => {
      mail.message.transform(() =>
        new PassThrough().once('end', () => {
          progress.handedOver = true;
        }),
      );
      done();
    });
    try {
      const info: SentMessageInfo = await within(
        LETTER_ANSWERS * answerMs,
        transport.sendMail(message),
      );
      return { is: 'accepted', said: wordsOf(String(info.response ?? ''), server) };
    } finally {
      transport.close();
      connection.destroy();
    }
  } catch (error) {
    return outcomeOf(error, server, progress.handedOver);
  }
}

function messageOf(letter: Letter) {
  checkLetter(letter);
  const { from, to, subject, text, html, messageId, date } = letter;
  return {
    from: mailbox(from),
    to: mailbox(to),
    envelope: { from: from.address, to: [to.address] },
    subject,
    text,
    html,
    messageId,
    date,
    headers: {
      // nobody's holiday notice should answer (RFC 3834, 5)
      'Auto-Submitted': 'auto-generated',
      ...letter.headers,
      ...(letter.unsubscribeUrl === undefined ? {} : unsubscribeHeaders(letter.unsubscribeUrl)),
    },
    // the parts are parted by the same line at every try
    baseBoundary: createHash('sha256').update(messageId).digest('hex').slice(0, 24),
    disableFileAccess: true,
    disableUrlAccess: true,
  };
}

const mailbox = ({ name = '', address }: { name?: string; address: string }) => ({ name, address });

function outcomeOf(error: unknown, server: MailServer, handedOver: boolean): Outcome {
  if (error instanceof AddressRefused)
    return { is: 'refused', by: 'policy', said: cleanWords(error.message) };
  const { code, responseCode, response } = error as {
    code?: string;
    responseCode?: number;
    response?: string;
  };
  if (code === 'ETLS')
    return { is: 'tryAgain', by: 'network', said: networkWords(error), answerLost: false };
  const said = wordsOf(response ?? '', server);
  if (responseCode !== undefined && responseCode >= 500)
    return { is: 'refused', by: 'server', said };
  if (responseCode !== undefined && responseCode >= 400)
    return { is: 'tryAgain', by: 'server', said, answerLost: false };
  return { is: 'tryAgain', by: 'network', said: networkWords(error), answerLost: handedOver };
}

/** A server may repeat what it was sent: the login stands in no word that is kept. */
function wordsOf(response: string, { login }: MailServer): string {
  if (login === undefined) return cleanWords(response);
  const { user, password } = login;
  const plain = `\u0000${user}\u0000${password}`;
  const coded = [plain, password, user].map((text) => Buffer.from(text).toString('base64'));
  return cleanWords(response, [...coded, password, user]);
}
