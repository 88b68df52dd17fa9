import { spawn, spawnSync } from 'node:child_process';
import { connect } from 'node:net';
import { freePort } from '../../apps/launcher/src/free-port.ts';
import { until } from '../../apps/launcher/src/process.ts';

export type TestRedis = { url: string; port: number; stop(): Promise<void> };

/** Whether this machine has a Redis server; where not, say so (`describe.skipIf(!redisIsHere)`). */
export const redisIsHere = spawnSync('redis-server', ['--version']).status === 0;

/** An empty Redis on a free port that keeps nothing on disk, as the queue needs it. */
export async function startRedis(): Promise<TestRedis> {
  if (!redisIsHere) throw new Error('redis-server is not installed: apt-get install redis-server');
  const port = await freePort();
  const server = spawn(
    'redis-server',
    ['--port', String(port), '--bind', '127.0.0.1', '--save', '', '--appendonly', 'no'].concat(
      '--maxmemory-policy',
      'noeviction',
    ),
    { stdio: 'ignore', cwd: '/' },
  );
  const ended = new Promise<void>((resolve) => {
    server.once('exit', () => resolve());
  });
  // a test run that dies must not leave its server behind
  const kill = () => server.kill('SIGKILL');
  process.once('exit', kill);
  if (!(await until(() => answers(port), 10_000)))
    throw new Error(`redis-server did not answer on port ${port} within 10 s`);
  return {
    url: `redis://127.0.0.1:${port}`,
    port,
    async stop() {
      process.off('exit', kill);
      server.kill('SIGTERM');
      await ended;
    },
  };
}

function answers(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = connect(port, '127.0.0.1', () => socket.write('PING\r\n'));
    socket.once('data', (data) => {
      socket.destroy();
      resolve(data.toString().startsWith('+PONG'));
    });
    socket.once('error', () => resolve(false));
  });
}
