import { randomUUID } from 'node:crypto';
import path from 'node:path';
import { ensureBuilt, nextCommand } from './build.ts';
import { webEnvironment, workerEnvironment } from './child-environment.ts';
import { type Child, runChild } from './children.ts';
import { type LauncherEnv, readEnv } from './env.ts';
import { freePort } from './free-port.ts';
import { migrateAll } from './migrate.ts';
import { projectRoot } from './project-root.ts';
import { refuseTakenPort } from './refuse-taken-port.ts';
import { clearEarlierRun, runFile } from './run-file.ts';
import { keepSecrets } from './secrets.ts';
import { openServers, type Servers } from './servers.ts';
import { freshSetupToken } from './setup-token.ts';
import { stops } from './stops.ts';
import { certificateTrouble, readCertificate } from './tls/certificate.ts';
import { startFront } from './tls/front.ts';

const PARENT_CHECK_MS = 500;
const KEEP_ALIVE_MS = 65_000;

/**
 * The life of an installation: clear what an earlier run left, open the servers, bring the tables up to
 * date, build if the sources changed, start web and worker, serve; at a signal undo all that in the
 * reverse order.
 */
export async function main(): Promise<void> {
  const undo = stops();
  const end = async (code: number) => {
    await undo.all();
    process.exit(code);
  };
  endOnSignal(undo, end);
  try {
    await launch(readEnv(process.env), undo, end);
  } catch (error) {
    // while stopping, whatever was under way fails, and that is no news
    if (!undo.begun) console.error(`\n${error instanceof Error ? error.message : String(error)}\n`);
    await end(undo.begun ? 0 : 1);
  }
}

type Undo = ReturnType<typeof stops>;
type End = (code: number) => Promise<void>;

async function launch(env: LauncherEnv, undo: Undo, end: End): Promise<void> {
  const began = performance.now();
  if (!env.testBuild && process.env.QUARTERMARK_TODAY !== undefined)
    say('QUARTERMARK_TODAY is left aside: only a test build can shift the clock.');
  const certificate = readCertificate(env.tls);
  await clearEarlierRun(env.dataDir, say);
  await refuseTakenPort(env.host, env.port);
  const run = runFile(env.dataDir);
  run.write({ url: env.origin, databasePort: null, parts: {} });
  run.note('launcher', process.pid);
  undo.add(run.remove);

  const secrets = keepSecrets(env.dataDir);
  const servers = await openServers(env, secrets, say);
  undo.add(() => servers.cluster?.stop());
  watchCluster(servers, undo, end);
  run.write({
    ...(run.read() ?? { parts: {} }),
    url: env.origin,
    databasePort: servers.cluster?.port ?? null,
  });
  await whileBuilding(env, undo, () => migrateAll(servers));
  const token = await freshSetupToken(servers.ownerUrl);

  const runId = randomUUID();
  // behind TLS the web app has a port of its own, which no other machine can reach
  const inner =
    certificate === null
      ? { host: env.host, port: env.port }
      : { host: '127.0.0.1', port: await freePort() };
  const giveUp = (error: Error) => {
    console.error(`\n${error.message}\n`);
    void end(1);
  };
  const parts: Child[] = [];
  undo.add(async () => {
    await Promise.all(parts.map((part) => part.stop()));
  });
  const common = { dataDir: env.dataDir, say, onGivenUp: giveUp };
  parts.push(
    runChild({
      ...common,
      name: 'worker',
      args: [
        path.join(projectRoot, 'apps/worker', env.testBuild ? 'dist-test' : 'dist', 'worker.mjs'),
      ],
      cwd: projectRoot,
      env: workerEnvironment(env, servers),
      isReady: (log) => log.written().includes('worker ready'),
      onStart: (pid) => run.note('worker', pid),
    }),
    runChild({
      ...common,
      name: 'web',
      args: [
        nextCommand(),
        'start',
        '-H',
        inner.host,
        '-p',
        String(inner.port),
        // longer than those in front keep a connection, or one is used again just as it closes
        '--keepAliveTimeout',
        String(KEEP_ALIVE_MS),
      ],
      cwd: path.join(projectRoot, 'apps/web'),
      env: webEnvironment(env, servers, env.secret ?? secrets.session, runId, inner),
      isReady: () => answersAs(inner, runId),
      onStart: (pid) => run.note('web', pid),
    }),
  );
  await Promise.all(parts.map((part) => part.ready));
  if (undo.begun) return;
  if (certificate !== null) {
    const front = await startFront(certificate, env, inner.port);
    undo.add(front.close);
    const trouble = certificateTrouble(certificate, new Date());
    if (trouble !== null) say(trouble);
  }
  announce(env, token, performance.now() - began);
}

/** Building and migrating need nothing of each other, and building is the long one. */
async function whileBuilding(
  env: LauncherEnv,
  undo: Undo,
  work: () => Promise<void>,
): Promise<void> {
  const { testBuild: test, dataDir } = env;
  const results = await Promise.allSettled([
    ensureBuilt({ test, dataDir, say, onChild: (kill) => undo.add(kill) }),
    work(),
  ]);
  for (const result of results) if (result.status === 'rejected') throw result.reason;
  if (undo.begun) throw new Error('stopped while starting');
}

async function answersAs(at: { host: string; port: number }, runId: string): Promise<boolean> {
  try {
    const host = ['0.0.0.0', '::'].includes(at.host) ? '127.0.0.1' : at.host;
    const address = host.includes(':') ? `[${host}]` : host;
    const response = await fetch(`http://${address}:${at.port}/health`);
    return ((await response.json()) as { run?: string }).run === runId;
  } catch {
    return false;
  }
}

function watchCluster(servers: Servers, undo: Undo, end: End): void {
  void servers.cluster?.ended.then(() => {
    if (undo.begun) return;
    console.error(
      '\nThe database ended unexpectedly. Nothing saved is lost; start again: npm start\n',
    );
    void end(1);
  });
}

function endOnSignal(undo: Undo, end: End): void {
  for (const name of ['SIGINT', 'SIGTERM'] as const)
    process.on(name, () => {
      if (!undo.begun) say('Stopping.');
      void end(0);
    });
  // killing npm without a word to its child would otherwise leave everything running
  const parent = process.ppid;
  setInterval(() => {
    if (process.ppid !== parent) void end(0);
  }, PARENT_CHECK_MS).unref();
}

function announce(env: LauncherEnv, token: string | null, tookMs: number): void {
  say(`Quartermark is running (${(tookMs / 1000).toFixed(1)} s).`);
  if (token === null) console.log(`\n  Open   ${env.origin}\n  Stop   Ctrl-C\n`);
  else
    console.log(
      [
        '',
        '  Nobody owns this installation yet. This address, good until the next start, lets you',
        "  make the owner's account or open the demo garage. Keep it to yourself:",
        '',
        `  Open   ${env.origin}/start?token=${token}`,
        '  Stop   Ctrl-C',
        '',
      ].join('\n'),
    );
}

function say(line: string): void {
  console.log(line);
}
