import { spawnSync } from 'node:child_process';
import { chmodSync, chownSync, lstatSync, mkdirSync, readdirSync } from 'node:fs';
import path from 'node:path';
import type { Binaries } from './binaries.ts';

/**
 * As whom PostgreSQL runs. It refuses to run as root, so a root start hands it to `nobody`; and where
 * nobody cannot reach the folders (a home folder closed to others), to a user namespace of its own.
 */
export type Identity =
  | { kind: 'self' }
  | { kind: 'nobody'; uid: number; gid: number }
  | { kind: 'namespace'; prefix: string[] };

/** uid and gid of `nobody` in Debian and its relatives (Debian Policy 9.2.2). */
const NOBODY = 65534;
const PREFIX = ['unshare', '-U', '--map-user=1000', '--map-group=1000'];

export function chooseIdentity(binaries: Binaries, dataDir: string): Identity {
  if (process.getuid?.() !== 0) return { kind: 'self' };
  const asNobody = { uid: NOBODY, gid: NOBODY, stdio: 'ignore' as const, cwd: '/' };
  const runs = spawnSync(binaries.postgres, ['--version'], asNobody).status === 0;
  const reaches = spawnSync('/bin/sh', ['-c', 'test -x "$0"', dataDir], asNobody).status === 0;
  if (runs && reaches) return { kind: 'nobody', uid: NOBODY, gid: NOBODY };
  const [command = '', ...rest] = PREFIX;
  const inside = spawnSync(command, [...rest, binaries.postgres, '--version'], { stdio: 'ignore' });
  if (inside.status === 0) return { kind: 'namespace', prefix: PREFIX };
  throw new Error(
    'PostgreSQL refuses to run as root, and no other user can reach this folder. ' +
      `Open the folders above ${dataDir} and the project to others (chmod o+x), start as an ordinary user, ` +
      'or set DATABASE_URL to a PostgreSQL server of your own.',
  );
}

/** Makes a folder that only this identity can read, and hands it over with all that is in it. */
export function ownFolder(folder: string, identity: Identity): void {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  handOver(folder, identity);
  chmodSync(folder, 0o700);
}

/** Gives a file or folder to the identity; a no-op where it already has it. */
export function handOver(target: string, identity: Identity): void {
  if (identity.kind === 'self') return;
  const uid = identity.kind === 'nobody' ? identity.uid : 0;
  const gid = identity.kind === 'nobody' ? identity.gid : 0;
  const found = lstatSync(target);
  if (found.uid === uid && found.gid === gid) return;
  chownSync(target, uid, gid);
  if (!found.isDirectory()) return;
  for (const name of readdirSync(target)) handOver(path.join(target, name), identity);
}
