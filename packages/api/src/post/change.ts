import { changePost as changeRow, makeSecret, readPostShown } from '@quartermark/db';
import { z } from 'zod';
import { commandFields } from '../asked.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import type { PostWritten } from '../letter-views.ts';
import { badField } from '../refused.ts';
import { staleOrNone } from '../stale.ts';
import type { Asker, World } from '../world.ts';
import { mustKeep, mustNotBeDemo } from './must-keep.ts';

const HOST = /^(?!-)[A-Za-z0-9_-]{1,63}(\.[A-Za-z0-9_-]{1,63})*$|^[0-9a-fA-F:.]{2,45}$/;
const MAILBOX = /^[^\s<>()[\]\\,;:"@]{1,64}@[^\s<>()[\]\\,;:"@]{1,255}$/u;
const LINE = /^[^\p{Cc}\p{Zl}\p{Zp}]*$/u;

const mail = z.strictObject({
  host: z
    .string()
    .max(253)
    .regex(HOST, 'must be the name of a mail server, such as mail.example.org'),
  port: z.int().min(1).max(65_535),
  encryption: z.enum(['implicit', 'required', 'ifOffered']),
  user: z.string().min(1).max(320).regex(LINE, 'must be one line').nullable(),
  from: z.string().regex(MAILBOX, 'must be one plain mailbox, such as garage@example.org'),
});

const HOOK_MAX = 2000;
const hookUrl = z.url({ protocol: /^https?$/ }).max(HOOK_MAX);
const keep = z.strictObject({ keep: z.literal(true) });

export const changePostInput = z.strictObject({
  ...commandFields,
  /** 0 where it was never set */
  baseRevision: z.int().nonnegative(),
  sendMinute: z.int().min(0).max(1439),
  /** null: no mail */
  mail: mail.nullable(),
  /** null: none */
  password: z.union([keep, z.strictObject({ set: z.string().min(1).max(1000) })]).nullable(),
  /** null: none; another address has another secret */
  hook: z.union([keep, z.strictObject({ url: hookUrl })]).nullable(),
});

type ChangePost = z.output<typeof changePostInput>;

/**
 * Sets the garage's hour, mail server and webhook. A webhook that is set gets a secret, which is told this once and
 * is not stored with the answer: whoever asks again is told none.
 */
export async function changePost(
  world: World,
  asker: Asker,
  input: ChangePost,
): Promise<PostWritten> {
  const made = input.hook !== null && 'url' in input.hook ? makeSecret().secret : null;
  let done = false;
  // a command leaves a hash of what was sent: no password may be guessed from it
  const { password } = input;
  const sent = { ...input, password: password !== null && 'set' in password ? 'set' : password };
  const written = await runCommand(world, asker, 'post.change', sent, async (writing) => {
    mustNotBeDemo(writing.garage);
    mustKeep(writing.role);
    const revision = await write(writing, input, made);
    done = true;
    return { id: writing.garage.id, revision, version: 0 };
  });
  return { ...written, hookSecret: done ? made : null };
}

async function write(writing: Writing, input: ChangePost, secret: string | null): Promise<number> {
  const { tx, garage, now: at, by } = writing;
  const { baseRevision, sendMinute, mail: server, password, hook } = input;
  if (server !== null && (server.user === null) !== (password === null))
    throw badField(
      server.user === null ? 'mail.user' : 'password',
      'password: a login is a user and a password; give both, or neither',
    );
  const before = await readPostShown(tx, garage.id);
  const current = (before?.revision ?? 0) === baseRevision;
  if (current && server !== null && password !== null && 'keep' in password)
    mayKeepPassword(before, server);
  const set = {
    sendMinute,
    mail: server,
    ...(password === null || server === null
      ? { mailPassword: null }
      : 'set' in password && { mailPassword: password.set }),
    ...(hook === null
      ? { hookUrl: null, hookSecret: null }
      : 'url' in hook && { hookUrl: hook.url, hookSecret: secret }),
  };
  const revision = await changeRow(tx, { garageId: garage.id, baseRevision, set, at, by });
  if (revision !== null) return revision;
  const said = { what: 'The garage’s post was', none: 'nothing was set yet' };
  throw await staleOrNone(tx, garage.id, said, baseRevision, before && withBody(before));
}

type Shown = Awaited<ReturnType<typeof readPostShown>>;

function withBody(shown: NonNullable<Shown>) {
  const { sendMinute, mail: server, hasPassword, hookUrl } = shown;
  return { ...shown, body: { sendMinute, mail: server, hasPassword, hookUrl } };
}

/** A password goes to the server it was given for: whoever names another one gives it again. */
function mayKeepPassword(before: Shown, server: NonNullable<ChangePost['mail']>): void {
  if (!before?.hasPassword)
    throw badField('password', 'password: none is stored that could be kept; give the password');
  const { mail } = before;
  const same = (['host', 'port', 'encryption', 'user'] as const).every(
    (field) => mail?.[field] === server[field],
  );
  if (!same)
    throw badField(
      'password',
      'password: it was given for another server or login; give the one that belongs to this one',
    );
}
