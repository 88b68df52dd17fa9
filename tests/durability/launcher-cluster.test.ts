import { type ChildProcess, spawn } from 'node:child_process';
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import postgres from 'postgres';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type Cluster, startCluster } from '../../apps/launcher/src/postgres/cluster.ts';
import { isAlive, until } from '../../apps/launcher/src/process.ts';

let folder = '';
let running: Cluster[] = [];
const said: string[] = [];

beforeEach(() => {
  folder = mkdtempSync(path.join(os.tmpdir(), 'quartermark-cluster-'));
  chmodSync(folder, 0o711);
  said.length = 0;
});
afterEach(async () => {
  await Promise.all(running.map((one) => one.stop()));
  running = [];
  rmSync(folder, { recursive: true, force: true });
});

async function start(inside = folder): Promise<Cluster> {
  const cluster = await startCluster({
    folder: inside,
    password: 'only-for-tests',
    say: (line) => said.push(line),
  });
  running.push(cluster);
  return cluster;
}

async function ask(cluster: Cluster, statement: string): Promise<unknown[]> {
  const sql = postgres(cluster.url('postgres'), { max: 1, onnotice: () => {} });
  try {
    return [...(await sql.unsafe(statement))];
  } finally {
    await sql.end();
  }
}

test('startCluster() keeps UTF-8, asks for a scrambled password, and listens on this machine alone', async () => {
  const cluster = await start();
  expect(
    await ask(
      cluster,
      `select pg_encoding_to_char(encoding) as encoding, datlocale as locale,
         current_setting('listen_addresses') as hosts, current_setting('unix_socket_directories') as sockets,
         current_setting('fsync') as fsync,
         (select string_agg(distinct auth_method, ',') from pg_hba_file_rules) as ways
       from pg_database where datname = 'postgres'`,
    ),
  ).toEqual([
    {
      encoding: 'UTF8',
      locale: 'C.UTF-8',
      hosts: '127.0.0.1',
      sockets: '',
      fsync: 'on',
      ways: 'scram-sha-256',
    },
  ]);
  const wrong = cluster.url('postgres', { name: 'owner', password: 'a guess' });
  const sql = postgres(wrong, { max: 1 });
  await expect(sql`select 1`).rejects.toThrow('password authentication failed');
  await sql.end();
  expect(statSync(path.join(folder, 'postgres')).mode & 0o777).toBe(0o700);
});

test('startCluster() finds the acknowledged rows after the server was killed', async () => {
  const first = await start();
  await ask(first, 'create table kept (n int)');
  await ask(first, 'insert into kept select generate_series(1, 100)');
  process.kill(first.pid, 'SIGKILL');
  const second = await start();
  expect(await ask(second, 'select count(*)::int as n from kept')).toEqual([{ n: 100 }]);
});

test('startCluster() ends a server that outlived its launcher and takes over its data', async () => {
  const { launcher, pid } = await startElsewhere();
  // with its guardian and the guardian's watch on the pipe gone first, nobody ends the server
  const guardian = parentOf(pid);
  const guards = [...childrenOf(guardian).filter((child) => child !== pid), guardian];
  expect(guards.length).toBe(2);
  for (const guard of guards) process.kill(guard, 'SIGKILL');
  expect(await until(() => !guards.some(isAlive), 5_000)).toBe(true);
  launcher.kill('SIGKILL');
  expect(isAlive(pid)).toBe(true);
  const second = await start();
  expect(isAlive(pid)).toBe(false);
  expect(said).toContain('Stopping the database of an earlier start.');
  expect(await ask(second, 'select 1 as one')).toEqual([{ one: 1 }]);
});

test('startCluster() leaves no server behind when whoever started it is killed', async () => {
  const { launcher, pid } = await startElsewhere();
  launcher.kill('SIGKILL');
  expect(await until(() => !isAlive(pid), 5_000)).toBe(true);
});

test('startCluster() passes over the note of a server that is gone, even where its number lives on', async () => {
  const first = await start();
  await first.stop();
  // this very test process stands for the stranger that was given the number
  writeFileSync(path.join(folder, 'postgres/postmaster.pid'), `${process.pid}\n`);
  expect(await ask(await start(), 'select 1 as one')).toEqual([{ one: 1 }]);
});

test('startCluster() refuses data of another PostgreSQL, says the remedy and changes nothing', async () => {
  const data = path.join(folder, 'postgres');
  mkdirSync(data);
  writeFileSync(path.join(data, 'PG_VERSION'), '17\n');
  await expect(start()).rejects.toThrow(
    /was written by PostgreSQL 17; this version brings PostgreSQL \d+ .*npm run export/s,
  );
  expect(readFileSync(path.join(data, 'PG_VERSION'), 'utf8')).toBe('17\n');
});

test.runIf(process.getuid?.() === 0)(
  'startCluster() works as root in a folder closed to others, and again once it is open',
  async () => {
    const closed = path.join(folder, 'closed');
    mkdirSync(closed, { mode: 0o700 });
    const inside = path.join(closed, 'data');
    const first = await start(inside);
    await ask(first, 'create table kept (n int)');
    await first.stop();
    chmodSync(closed, 0o711);
    const second = await start(inside);
    expect(await ask(second, 'select count(*)::int as n from kept')).toEqual([{ n: 0 }]);
    expect(statSync(path.join(inside, 'postgres')).uid).toBe(65534);
  },
);

/** A cluster that another process started, and that process. */
async function startElsewhere(): Promise<{ launcher: ChildProcess; pid: number }> {
  const module = path.resolve(import.meta.dirname, '../../apps/launcher/src/postgres/cluster.ts');
  const script = `
    const { startCluster } = await import(${JSON.stringify(module)});
    const cluster = await startCluster({
      folder: ${JSON.stringify(folder)}, password: 'only-for-tests', say() {},
    });
    console.log(cluster.pid);
    setInterval(() => {}, 1000);`;
  const args = ['--import', 'tsx', '--input-type=module', '-e', script];
  const launcher = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] });
  let printed = '';
  launcher.stdout.on('data', (data) => {
    printed += data;
  });
  if (!(await until(() => printed.includes('\n'), 20_000))) throw new Error('no cluster in 20 s');
  return { launcher, pid: Number(printed) };
}

function childrenOf(pid: number): number[] {
  return readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8')
    .split(' ')
    .filter(Boolean)
    .map(Number);
}

function parentOf(pid: number): number {
  const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
  return Number(stat.slice(stat.lastIndexOf(')') + 2).split(' ')[1]);
}
