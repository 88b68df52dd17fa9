import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import path from 'node:path';
import type { LiveEvent, Written } from '@quartermark/api/client';
import { appRouter, createCallerFactory } from '@quartermark/api/server';
import type { EntryDraft } from '@quartermark/engine/log';
import superjson from 'superjson';
import { nextCommand } from '../../apps/launcher/src/build.ts';
import { freePort } from '../../apps/launcher/src/free-port.ts';
import { eventually } from '../support/eventually.ts';
import { HttpApi } from '../support/http-api.ts';
import type { Urls } from './database.ts';
import { type DemoHouse, SECRET } from './demo-house.ts';

export type Command = { garageId: string; commandId: string; entry: EntryDraft };

/** The way a person's entry comes in and news of it goes out. */
export type Door = {
  record(command: Command): Promise<Written>;
  /** resolves once news are coming */
  look(onEvent: (event: LiveEvent) => void): Promise<void>;
  close(): Promise<void>;
};

const WEB = path.resolve(import.meta.dirname, '../../apps/web');
const BUILT = path.join(WEB, '.next-test/BUILD_ID');

/** When the web app was last built for tests; null if it was not. */
export const webBuiltAt = (): Date | null => (existsSync(BUILT) ? statSync(BUILT).mtime : null);

/** Straight into the api of this process. */
export function innerDoor({ api, cookie, garageId }: DemoHouse): Door {
  const caller = createCallerFactory(appRouter)(
    api.createContext({ headers: new Headers({ cookie }) }),
  );
  let over = false;
  return {
    record: (command) => caller.entry.record(command),
    async look(onEvent) {
      const events = (await caller.live.changes({ garageId }))[Symbol.asyncIterator]();
      // the second one says that the database has confirmed the subscription
      for (let resync = 0; resync < 2; resync += 1) await events.next();
      void (async () => {
        for (let next = await events.next(); !next.done && !over; next = await events.next())
          onEvent(next.value);
      })().catch((error) => {
        if (!over) throw error;
      });
    },
    async close() {
      over = true;
    },
  };
}

/** Through the web app in a process of its own, over HTTP, as a browser does it. */
export async function webDoor(urls: Urls, house: DemoHouse): Promise<Door> {
  const port = await freePort();
  const origin = `http://127.0.0.1:${port}`;
  const child = startWeb(urls, port, origin);
  const answers = () =>
    fetch(`${origin}/health`).then(
      (response) => response.ok,
      () => false,
    );
  await eventually('the web app to answer', answers, 60_000);
  const headers = { cookie: house.cookie };
  const http = new HttpApi(origin, fetch, headers);
  const gone = new AbortController();
  return {
    record: (command) => http.mutate<Written>('entry.record', command),
    async look(onEvent) {
      const asked = encodeURIComponent(superjson.stringify({ garageId: house.garageId }));
      const response = await fetch(`${origin}/api/trpc/live.changes?input=${asked}`, {
        headers: { ...headers, accept: 'text/event-stream' },
        signal: gone.signal,
      });
      if (!response.ok || !response.body)
        throw new Error(`live.changes answered ${response.status}: ${await response.text()}`);
      await new Promise<void>((resolve, reject) => {
        let resyncs = 0;
        readEvents(response.body as ReadableStream<Uint8Array>, (event) => {
          if (event.kind === 'resync') resyncs += 1;
          if (resyncs === 2) resolve();
          onEvent(event);
        }).catch((error) => {
          if (!gone.signal.aborted) reject(error);
        });
      });
    },
    async close() {
      gone.abort();
      if (child.exitCode !== null) return;
      const ended = new Promise((resolve) => child.once('exit', resolve));
      child.kill('SIGTERM');
      await ended;
    },
  };
}

function startWeb({ appUrl }: Urls, port: number, origin: string): ChildProcess {
  return spawn(process.execPath, [nextCommand(), 'start', '-H', '127.0.0.1', '-p', `${port}`], {
    cwd: WEB,
    env: {
      PATH: process.env.PATH,
      NODE_ENV: 'production',
      NEXT_TELEMETRY_DISABLED: '1',
      TEST_BUILD: '1',
      DATABASE_APP_URL: appUrl,
      QUARTERMARK_SECRET: SECRET,
      QUARTERMARK_ORIGIN: origin,
      PORT: `${port}`,
    },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
}

/** Reads server-sent events (WHATWG HTML, 9.2) as far as tRPC uses them. */
async function readEvents(
  body: ReadableStream<Uint8Array>,
  onEvent: (event: LiveEvent) => void,
): Promise<void> {
  let text = '';
  const decoder = new TextDecoder();
  for await (const chunk of body) {
    text += decoder.decode(chunk, { stream: true });
    const blocks = text.split('\n\n');
    text = blocks.pop() ?? '';
    for (const block of blocks) {
      const lines = block.split('\n');
      // named events are tRPC's own: connected, ping, return
      if (lines.some((line) => line.startsWith('event:'))) continue;
      const data = lines.find((line) => line.startsWith('data:'))?.slice(5);
      if (data) onEvent(superjson.deserialize(JSON.parse(data)));
    }
  }
}
