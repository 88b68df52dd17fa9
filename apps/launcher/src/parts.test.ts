import { mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import os from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { freePort } from './free-port.ts';
import { refuseTakenPort } from './refuse-taken-port.ts';
import { keepSecrets } from './secrets.ts';
import { hashSources } from './sources.ts';
import { stops } from './stops.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(path.join(os.tmpdir(), 'quartermark-parts-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test('hashSources() changes with a content and with a name, and not with tests or builds', () => {
  mkdirSync(path.join(folder, 'app/.next'), { recursive: true });
  const write = (name: string, text: string) => writeFileSync(path.join(folder, 'app', name), text);
  write('a.ts', '1');
  const before = hashSources(folder, ['app', 'absent']);
  write('a.test.ts', '1');
  write('.next/built.js', '1');
  expect(hashSources(folder, ['app', 'absent'])).toBe(before);
  write('b.ts', '');
  const withB = hashSources(folder, ['app']);
  expect(withB).not.toBe(before);
  write('a.ts', '2');
  expect(hashSources(folder, ['app'])).not.toBe(withB);
});

test('keepSecrets() makes secrets once, apart from each other, for their owner alone', () => {
  const first = keepSecrets(folder);
  expect(keepSecrets(folder)).toEqual(first);
  expect(new Set(Object.values(first)).size).toBe(4);
  const kept = path.join(folder, 'secrets');
  expect(statSync(kept).mode & 0o777).toBe(0o700);
  for (const name of readdirSync(kept))
    expect(statSync(path.join(kept, name)).mode & 0o777).toBe(0o600);
});

test('keepSecrets() says which file is damaged and does not put another in its place', () => {
  keepSecrets(folder);
  writeFileSync(path.join(folder, 'secrets/app'), '');
  expect(() => keepSecrets(folder)).toThrow(/secrets\/app is damaged/);
});

test('refuseTakenPort() names another port to try', async () => {
  const port = await freePort();
  const other = createServer();
  await new Promise<void>((resolve) => {
    other.listen(port, '127.0.0.1', resolve);
  });
  await expect(refuseTakenPort('127.0.0.1', port)).rejects.toThrow(`PORT=${port + 1} npm start`);
  await new Promise((resolve) => other.close(resolve));
  await expect(refuseTakenPort('127.0.0.1', port)).resolves.toBeUndefined();
});

test('stops() undoes in reverse order, once, whatever one of the steps does', async () => {
  const undo = stops();
  const done: string[] = [];
  undo.add(() => void done.push('first'));
  undo.add(() => Promise.reject(new Error('expected in this test')));
  undo.add(async () => void done.push('last'));
  await Promise.all([undo.all(), undo.all()]);
  expect(done).toEqual(['last', 'first']);
});
