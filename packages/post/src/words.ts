const LONGEST = 200;
const READ = 2000;

/**
 * What a server said, fit to be kept, shown and logged: at most 200 characters, on one line, without
 * control, direction and invisible characters, mail addresses and what is named as secret.
 */
export function cleanWords(text: string, secrets: readonly string[] = []): string {
  let clean = text;
  for (const secret of secrets) if (secret !== '') clean = clean.replaceAll(secret, '(secret)');
  // a reply may be of any length, and what follows is not linear in it
  clean = clean.slice(0, READ);
  clean = clean
    .replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}\p{Co}\p{Cn}\uFFFD]+/gu, ' ')
    .replace(/[^\s<>"'(),;:]+@[^\s<>"'(),;:]+/g, '(address)')
    .replace(/\s+/gu, ' ')
    .trim();
  return Array.from(clean).slice(0, LONGEST).join('').trim();
}

const NETWORK: Record<string, string> = {
  ENOTFOUND: 'The name of the server was not found.',
  EAI_AGAIN: 'The name of the server could not be looked up just now.',
  EDNS: 'The name of the server could not be looked up just now.',
  ECONNREFUSED: 'The server took no connection.',
  ECONNRESET: 'The server broke the connection off.',
  EPIPE: 'The server broke the connection off.',
  ECONNECTION: 'The connection to the server was lost.',
  ESOCKET: 'The connection to the server was lost.',
  ETIMEDOUT: 'The server did not answer in time.',
  EHOSTUNREACH: 'There is no way to the server.',
  ENETUNREACH: 'There is no way to the server.',
  ETLS: 'The server offers no encrypted connection, which the settings ask for.',
};

/** Why nothing was heard, in a sentence: by the code of the failure, never by its own text. */
export function networkWords(error: unknown): string {
  // a library that gives the failure a code of its own keeps the system's beside it
  const { code = '', originalCode = '' } = error as { code?: string; originalCode?: string };
  const codes = [originalCode, code];
  if (codes.some((one) => /CERT|SELF_SIGNED|ISSUER|ERR_TLS|ERR_SSL|EPROTO/.test(one)))
    return 'The certificate of the server, or its encryption, is not one to be trusted.';
  const known = codes.map((one) => NETWORK[one]).find((words) => words !== undefined);
  return known ?? 'The connection to the server failed.';
}
