import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { openLog } from './log-file.ts';
import { fingerprint, until } from './process.ts';
import { projectRoot } from './project-root.ts';
import { hashSources } from './sources.ts';

type Target = {
  name: 'web' | 'worker';
  /** what a build is made of */
  sources: string[];
  command: string[];
  /** where it comes to lie, plain and for tests */
  folders: { plain: string; test: string };
};

const COMMON = ['packages', 'package-lock.json', 'tsconfig.base.json'];

const targets: Target[] = [
  {
    name: 'worker',
    sources: ['apps/worker', ...COMMON],
    command: ['build.mjs'],
    folders: { plain: 'apps/worker/dist', test: 'apps/worker/dist-test' },
  },
  {
    name: 'web',
    sources: ['apps/web', 'seed', ...COMMON],
    command: [nextCommand(), 'build'],
    folders: { plain: 'apps/web/.next', test: 'apps/web/.next-test' },
  },
];

export function nextCommand(): string {
  return createRequire(path.join(projectRoot, 'apps/web/package.json')).resolve(
    'next/dist/bin/next',
  );
}

export type BuildOptions = {
  test: boolean;
  dataDir: string;
  say: (line: string) => void;
  /** told of each child, so that a stop can end it */
  onChild?: (kill: () => void) => void;
};

/** Builds web and worker where their sources have changed since they were last built. */
export async function ensureBuilt(options: BuildOptions): Promise<void> {
  for (const target of targets) {
    const wanted = hashSources(projectRoot, target.sources);
    const stamp = path.join(
      projectRoot,
      options.test ? target.folders.test : target.folders.plain,
      'sources.sha256',
    );
    const fresh = () => existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted;
    if (fresh()) continue;
    await underLock(`${target.name}-${options.test ? 'test' : 'plain'}`, async () => {
      if (fresh()) return;
      await build(target, options);
      writeFileSync(stamp, wanted);
    });
  }
}

/** Two starts of one checkout must not build into the same folder at once. */
async function underLock(name: string, work: () => Promise<void>): Promise<void> {
  const lock = path.join(projectRoot, 'node_modules/.cache', `quartermark-${name}.lock`);
  mkdirSync(path.dirname(lock), { recursive: true });
  const take = () => {
    try {
      writeFileSync(lock, `${process.pid} ${fingerprint(process.pid)}`, { flag: 'wx' });
      return true;
    } catch {
      const [pid, mark] = existsSync(lock) ? readFileSync(lock, 'utf8').split(' ') : [];
      if (pid && mark && fingerprint(Number(pid)) !== mark) rmSync(lock, { force: true });
      return false;
    }
  };
  if (!(await until(take, 300_000, 200)))
    throw new Error(
      `Another build has held ${lock} for five minutes. Delete the file and start again.`,
    );
  try {
    await work();
  } finally {
    rmSync(lock, { force: true });
  }
}

async function build(target: Target, { test, dataDir, say, onChild }: BuildOptions): Promise<void> {
  if (target.name === 'web')
    say('Building the app, because its sources are new (a minute at most; once per version).');
  const log = openLog(dataDir, `build-${target.name}`);
  const child = spawn(process.execPath, target.command, {
    cwd: path.join(projectRoot, 'apps', target.name),
    env: {
      ...inheritedForBuild(),
      NODE_ENV: 'production',
      NEXT_TELEMETRY_DISABLED: '1',
      TEST_BUILD: test ? '1' : '',
    },
    stdio: ['ignore', log.fd, log.fd],
  });
  onChild?.(() => child.kill('SIGTERM'));
  const code = await new Promise<number | null>((resolve, reject) => {
    child.once('exit', resolve);
    child.once('error', reject);
  });
  if (code !== 0)
    throw new Error(
      `Building ${target.name} failed. Its last lines (${log.file}):\n${log.tail(30)}`,
    );
}

/** A build must not depend on, or take up, the addresses and secrets of one machine. */
function inheritedForBuild(): NodeJS.ProcessEnv {
  const kept = Object.entries(process.env).filter(
    ([name]) => !/^(DATABASE_|REDIS_|QUARTERMARK_|PORT$|HOST$)/.test(name),
  );
  return Object.fromEntries(kept) as NodeJS.ProcessEnv;
}
