import net from 'node:net';
import { listen, OUTBOX_CHANNEL } from '@quartermark/db';
import postgres from 'postgres';
import { expect, test } from 'vitest';
import { freshDatabase } from '../support/database.ts';
import { eventually } from '../support/eventually.ts';

test('listen() hears again after its connection was cut, and says so', async () => {
  const database = await freshDatabase('db-listen');
  const sql = postgres(database.ownerUrl, { max: 1 });
  const heard: string[] = [];
  let resyncs = 0;
  const listener = listen(
    database.jobUrl,
    OUTBOX_CHANNEL,
    (payload) => heard.push(payload),
    () => {
      resyncs += 1;
    },
  );
  try {
    await listener.ready;
    expect(resyncs).toBe(1);
    await sql`select pg_notify(${OUTBOX_CHANNEL}, 'before'), pg_notify('another', 'not for us')`;
    await eventually('the first message', async () => heard.length === 1);
    await sql`
      select pg_terminate_backend(pid) from pg_stat_activity
      where datname = current_database() and application_name like 'quartermark listen%'`;
    await eventually('a second subscription', async () => resyncs === 2);
    await sql`select pg_notify(${OUTBOX_CHANNEL}, 'after')`;
    await eventually('the second message', async () => heard.length === 2);
    expect(heard).toEqual(['before', 'after']);
  } finally {
    await listener.close();
    await sql.end();
    await database.drop();
  }
});

/** A line to the server that can be taken away and put back, as a restart of the server would. */
async function line(to: number) {
  const sockets = new Set<net.Socket>();
  const server = net.createServer((near) => {
    const far = net.connect(to, '127.0.0.1');
    for (const socket of [near, far]) {
      sockets.add(socket);
      socket.on('error', () => {}).on('close', () => sockets.delete(socket));
    }
    near.pipe(far).pipe(near);
  });
  const put = (port: number) =>
    new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve));
  await put(0);
  const { port } = server.address() as net.AddressInfo;
  const cut = () =>
    new Promise<void>((resolve) => {
      server.close(() => resolve());
      for (const socket of sockets) socket.destroy();
    });
  return { port, cut, mend: () => put(port) };
}

test('listen() comes back to a server that was away for several attempts', async () => {
  const database = await freshDatabase('db-listen-away');
  const url = new URL(database.jobUrl);
  const between = await line(Number(url.port));
  url.port = String(between.port);
  const heard: string[] = [];
  let resyncs = 0;
  const listener = listen(
    url.href,
    OUTBOX_CHANNEL,
    (payload) => heard.push(payload),
    () => {
      resyncs += 1;
    },
  );
  const sql = postgres(database.ownerUrl, { max: 1 });
  try {
    await listener.ready;
    await between.cut();
    // attempts come after 50, 100, 200 ms ... and must all fail
    await new Promise((resolve) => setTimeout(resolve, 500));
    expect(resyncs).toBe(1);
    await between.mend();
    await eventually('a second subscription', async () => resyncs === 2);
    await sql`select pg_notify(${OUTBOX_CHANNEL}, 'after')`;
    await eventually('a message', async () => heard.length === 1);
  } finally {
    await listener.close();
    await between.cut();
    await sql.end();
    await database.drop();
  }
});
