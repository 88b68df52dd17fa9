import { randomBytes } from 'node:crypto';
import { chmodSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';

const NAMES = ['owner', 'app', 'job', 'session'] as const;
export type Secrets = Record<(typeof NAMES)[number], string>;

/**
 * The passwords of the three database roles and the secret that signs sessions. Made once, kept in
 * files that only their owner can read, apart from the database's own folder.
 */
export function keepSecrets(dataDir: string): Secrets {
  const folder = path.join(dataDir, 'secrets');
  mkdirSync(folder, { recursive: true });
  chmodSync(folder, 0o700);
  const made = NAMES.map((name) => [name, keep(path.join(folder, name))] as const);
  return Object.fromEntries(made) as Secrets;
}

function keep(file: string): string {
  try {
    writeFileSync(file, randomBytes(32).toString('base64url'), { mode: 0o600, flag: 'wx' });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
  }
  const found = readFileSync(file, 'utf8').trim();
  if (found.length >= 32) return found;
  throw new Error(
    `${file} is damaged: it should hold at least 32 characters. Restore it from a copy.`,
  );
}
