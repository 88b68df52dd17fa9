import type { MailSetting } from '@quartermark/api/client';
import { z } from 'zod';
import type { VersionLine } from '../../forms/version-rows.ts';
import { hourWords } from '../letters-words.ts';

/** What `post.change` takes. */
export type PostChange = {
  sendMinute: number;
  mail: MailSetting | null;
  password: { keep: true } | { set: string } | null;
  /** an address that is given, though it be the same, has a new secret */
  hook: { keep: true } | { url: string } | null;
};

/** What is shown of the post: the password and the webhook's secret never leave the server. */
type PostShown = {
  sendMinute: number;
  mail: MailSetting | null;
  hasPassword: boolean;
  hookUrl: string | null;
};

/** A change, and what is shown of it; of what stands, the change that keeps it so. */
export type PostBody = PostChange & PostShown;

/** What stands, as the change that keeps it so. */
export function postBody({ sendMinute, mail, hasPassword, hookUrl }: PostShown): PostBody {
  const password = hasPassword ? ({ keep: true } as const) : null;
  const hook = hookUrl === null ? null : ({ keep: true } as const);
  return { sendMinute, mail, hasPassword, hookUrl, password, hook };
}

/**
 * What the form of the garage's post holds. The password is none of it, since what a form holds is kept in the
 * browser until it is saved.
 */
export type PostFields = {
  baseRevision: number;
  /** "06:00" */
  hour: string;
  by: 'none' | 'server';
  host: string;
  port: string;
  encryption: MailSetting['encryption'];
  login: boolean;
  user: string;
  from: string;
  /** empty: none */
  hookUrl: string;
  newSecret: boolean;
  /** what the fields were taken from */
  standing: { revision: number; hookUrl: string | null; hasPassword: boolean };
};

/** Submission by TLS from the start, see RFC 8314. */
const USUAL_PORT = 465;

export function postFields(body: PostShown, revision: number): PostFields {
  const { sendMinute, mail, hookUrl, hasPassword } = body;
  return {
    baseRevision: revision,
    hour: hourWords(sendMinute),
    by: mail === null ? 'none' : 'server',
    host: mail?.host ?? '',
    port: String(mail?.port ?? USUAL_PORT),
    encryption: mail?.encryption ?? 'implicit',
    login: mail === null || mail.user !== null,
    user: mail?.user ?? '',
    from: mail?.from ?? '',
    hookUrl: hookUrl ?? '',
    newSecret: false,
    standing: { revision, hookUrl, hasPassword },
  };
}

/**
 * What was typed as a change, or what is wrong by the path the server would name.
 *
 * @param password as typed; empty: the one that is kept, if there is one
 */
export function readPost(
  fields: PostFields,
  password: string,
): { body: PostBody } | { problems: Record<string, string> } {
  const problems: Record<string, string> = {};
  const sendMinute = minuteOf(fields.hour);
  if (sendMinute === null) problems.sendMinute = 'Choose an hour, such as 06:00.';
  const mail = fields.by === 'none' ? null : readMail(fields, problems);
  if (sendMinute === null || Object.keys(problems).length > 0) return { problems };
  const change = {
    sendMinute,
    mail,
    password: mail === null || mail.user === null ? null : passwordOf(password, fields),
    hook: hookOf(fields),
  };
  const hookUrl = change.hook === null ? null : fields.hookUrl.trim();
  return { body: { ...change, hasPassword: change.password !== null, hookUrl } };
}

function readMail(fields: PostFields, problems: Record<string, string>): MailSetting {
  const host = fields.host.trim();
  const port = Number(fields.port.trim());
  const user = fields.user.trim();
  const from = fields.from.trim();
  if (host === '') problems['mail.host'] = 'Give the name of the server, such as mail.example.org.';
  if (!/^\d+$/.test(fields.port.trim()) || port < 1 || port > 65_535)
    problems['mail.port'] = 'Give a number from 1 to 65535, as your mail provider says.';
  if (fields.login && user === '')
    problems['mail.user'] = 'Give the name to log in with, or choose that no login is needed.';
  if (!/^[^\s@]+@[^\s@]+$/.test(from))
    problems['mail.from'] = 'Give the mailbox that letters come from, such as garage@example.org.';
  return { host, port, encryption: fields.encryption, user: fields.login ? user : null, from };
}

function passwordOf(typed: string, { standing }: PostFields): PostChange['password'] {
  if (typed !== '') return { set: typed };
  return standing.hasPassword ? { keep: true } : null;
}

/** Kept only where what stands is the address that is shown: somebody else may have set another since. */
function hookOf({ hookUrl, newSecret, standing, baseRevision }: PostFields): PostChange['hook'] {
  const url = hookUrl.trim();
  if (url === '') return null;
  const same = url === standing.hookUrl && baseRevision === standing.revision;
  return same && !newSecret ? { keep: true } : { url };
}

/** @example minuteOf('06:30') // 390 */
export function minuteOf(hour: string): number | null {
  const [, hours, minutes] = /^([01]\d|2[0-3]):([0-5]\d)$/.exec(hour) ?? [];
  return hours === undefined ? null : Number(hours) * 60 + Number(minutes);
}

/**
 * Whether what stood before a change can be put back from here: not where a password or a secret was replaced, since
 * only the server knew it.
 */
export function canGoBack(before: PostBody, { password, hook }: PostChange): boolean {
  const replaced = (password !== null && 'set' in password) || (hook !== null && 'url' in hook);
  const dropped =
    (before.hasPassword && password === null) || (before.hookUrl !== null && hook === null);
  return !replaced && !dropped;
}

/** The post as somebody else saved it meanwhile. */
export const postSchema: z.ZodType<PostBody> = z
  .object({
    sendMinute: z.number(),
    mail: z
      .object({
        host: z.string(),
        port: z.number(),
        encryption: z.enum(['implicit', 'required', 'ifOffered']),
        user: z.string().nullable(),
        from: z.string(),
      })
      .nullable(),
    hasPassword: z.boolean(),
    hookUrl: z.string().nullable(),
  })
  .transform(postBody);

export const ENCRYPTION_WORDS: Readonly<Record<MailSetting['encryption'], string>> = {
  implicit: 'From the start (TLS, usually port 465)',
  required: 'Before the login (STARTTLS, usually port 587)',
  ifOffered: 'Only if the server offers it',
};

/** The post in words, a line for each thing the form can change. */
export function postLines({ sendMinute, mail, hasPassword, hookUrl }: PostBody): VersionLine[] {
  return [
    { label: 'Letters leave at', words: hourWords(sendMinute) },
    { label: 'Mail server', words: mail === null ? 'None' : `${mail.host}, port ${mail.port}` },
    { label: 'Encryption', words: mail === null ? 'None' : ENCRYPTION_WORDS[mail.encryption] },
    { label: 'Login', words: mail?.user ?? 'None' },
    { label: 'Password', words: hasPassword ? 'Kept' : 'None' },
    { label: 'Letters come from', words: mail?.from ?? 'Nobody' },
    { label: 'Webhook', words: hookUrl ?? 'None' },
  ];
}
