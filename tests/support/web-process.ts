import { type ChildProcess, spawn } from 'node:child_process';
import path from 'node:path';
import { nextCommand } from '../../apps/launcher/src/build.ts';
import { freePort } from '../../apps/launcher/src/free-port.ts';
import { type Home, SECRET } from './api-house.ts';
import { eventually } from './eventually.ts';
import { HttpApi } from './http-api.ts';

const web = path.resolve(import.meta.dirname, '../../apps/web');

export type WebProcess = {
  origin: string;
  /** with the owner's session */
  api: HttpApi;
  /** resolves once the process has printed these words */
  said(words: string): Promise<unknown>;
  /** all that it has printed */
  printed(): string;
  kill(): Promise<void>;
};

/** The web app in a process of its own, from the test build, on the house's database. */
export async function startWeb(at: Home, more: Record<string, string> = {}): Promise<WebProcess> {
  const port = await freePort();
  const origin = `http://127.0.0.1:${port}`;
  const child = spawn(
    process.execPath,
    [nextCommand(), 'start', '-H', '127.0.0.1', '-p', `${port}`],
    {
      cwd: web,
      env: {
        PATH: process.env.PATH,
        NODE_ENV: 'production',
        NEXT_TELEMETRY_DISABLED: '1',
        TEST_BUILD: '1',
        DATABASE_APP_URL: at.database.appUrl,
        QUARTERMARK_SECRET: SECRET,
        QUARTERMARK_ORIGIN: origin,
        QUARTERMARK_TODAY: at.today,
        PORT: `${port}`,
        ...more,
      },
      stdio: ['ignore', 'pipe', 'pipe'],
    },
  );
  let printed = '';
  child.stdout?.on('data', (data) => {
    printed += data;
  });
  child.stderr?.on('data', (data) => {
    printed += data;
    process.stderr.write(data);
  });
  const healthy = () =>
    fetch(`${origin}/health`).then(
      (response) => response.ok,
      () => false,
    );
  try {
    await eventually('the web app to answer', healthy, 60_000);
  } catch (error) {
    await kill(child);
    throw error;
  }
  return {
    origin,
    api: new HttpApi(origin, fetch, { cookie: at.cookie }),
    printed: () => printed,
    said: (words) => eventually(`"${words}"`, async () => printed.includes(words)),
    kill: () => kill(child),
  };
}

async function kill(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = new Promise((resolve) => child.once('exit', resolve));
  child.kill('SIGKILL');
  await gone;
}
