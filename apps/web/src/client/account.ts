import { refusalWords, type Trouble } from './refusal-words.ts';

const TOO_OFTEN = 'Too many tries in a short time. Wait a minute, then try again.';

const WORDS: Record<string, string> = {
  INVALID_EMAIL_OR_PASSWORD:
    'That address and password do not belong together. Check both and try again.',
  INVALID_EMAIL: 'This is no e-mail address; write it as name@place.',
};

/** Posts to the account routes; they set and clear the session's cookie. Null means it was done. */
export async function postAccount(
  path: 'sign-in/email' | 'sign-out' | 'setup/owner' | 'setup/demo',
  body: Record<string, unknown>,
): Promise<Trouble | null> {
  let response: Response;
  try {
    response = await fetch(`/api/auth/${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
  } catch (error) {
    return refusalWords(error);
  }
  if (response.ok) return null;
  return accountTrouble(response.status, await response.json().catch(() => null));
}

/** The account routes answer `{message, code}`, and `refusal` where the refusal is our own. */
export function accountTrouble(status: number, body: unknown): Trouble {
  const said = typeof body === 'object' && body !== null ? (body as Record<string, unknown>) : {};
  if (said.refusal) return refusalWords({ data: said });
  const known = typeof said.code === 'string' ? WORDS[said.code] : undefined;
  const message =
    status === 429
      ? TOO_OFTEN
      : (known ??
        (typeof said.message === 'string' && said.message !== ''
          ? said.message
          : `The server refused this with status ${status} and gave no reason; its log tells more.`));
  return { place: 'form', fields: {}, message, refusal: null };
}
