import type { MailState } from '@quartermark/api/client';
import { momentWords } from '../garage/moment-words.ts';

export type MailWords = {
  /** in a few words, without a full stop */
  state: string;
  /** sentences that say the rest; may be none */
  more: string[];
  /** the server refused it for good, or all tries are over */
  failed: boolean;
};

/**
 * How far a letter, a test or a webhook's post has come on its way.
 *
 * @param zone IANA name of the garage's zone, in which moments are told
 */
export function mailWords(mail: MailState, zone: string): MailWords {
  const { state, to, tries, words, answerLost, at, nextAt } = mail;
  const moment = (iso: string | null) => (iso === null ? '' : momentWords(iso, zone));
  const towards = to === null ? '' : ` to ${to}`;
  const said = words === null ? [] : [`The server said: ${words}`];
  const twice = answerLost
    ? ['A try ended without an answer, so a second copy of the same letter may have come.']
    : [];
  switch (state) {
    case 'notByMail':
      return { state: 'Only here, not by mail', more: [], failed: false };
    case 'delivered': {
      const when = at === null ? '' : ` on ${moment(at)}`;
      const after = tries > 1 ? [`It took ${tries} tries.`] : [];
      return {
        state: `Delivered${towards}${when}`,
        more: [...after, ...said, ...twice],
        failed: false,
      };
    }
    case 'waiting': {
      const next =
        nextAt === null
          ? []
          : [`${tries === 0 ? 'It leaves' : 'It is tried again'} on ${moment(nextAt)}.`];
      const soFar = tries === 0 ? 'Waits to leave' : `Not delivered yet, ${triesWords(tries)}`;
      return {
        state: `${soFar}${tries === 0 ? towards : ''}`,
        more: [...next, ...said, ...twice],
        failed: false,
      };
    }
    case 'givenUp': {
      const when = at === null ? '' : ` on ${moment(at)}`;
      return {
        state: `Given up after ${triesWords(tries)}${when}: not delivered${towards}`,
        more: [...said, ...twice],
        failed: true,
      };
    }
  }
}

const triesWords = (tries: number) => (tries === 1 ? '1 try' : `${tries} tries`);
