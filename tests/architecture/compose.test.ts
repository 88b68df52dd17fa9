import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { root } from './source-files.ts';

// No container engine and no YAML reader is at hand here: what is checked is what the files say of
// each other and of the project. That the images exist and start is not checked.
const read = (file: string) => readFileSync(path.join(root, file), 'utf8');
const compose = read('docker-compose.yml');
const dockerfile = read('deploy/Dockerfile');
const example = read('deploy/env.example');
const all = (text: string, pattern: RegExp) => [...text.matchAll(pattern)].map((m) => m[1] ?? '');
/** Files that a build makes, by the command that makes them. */
const BUILT: Record<string, string> = { 'apps/worker/dist/worker.mjs': 'apps/worker/build.mjs' };

describe('docker-compose.yml', () => {
  const body = compose.slice(compose.indexOf('\nservices:'), compose.indexOf('\nvolumes:'));
  const services = all(body, /^ {2}([a-z]+):$/gm);

  test('indents by two blanks and never by a tab', () => {
    const lines = compose.split('\n').filter((line) => line.trim() !== '');
    expect(lines.filter((line) => /\t/.test(line))).toEqual([]);
    expect(lines.filter((line) => (/^ */.exec(line)?.[0].length ?? 0) % 2 !== 0)).toEqual([]);
  });
  test('names the six parts, and waits only for parts it names', () => {
    expect(services.sort()).toEqual(['migrate', 'postgres', 'proxy', 'redis', 'web', 'worker']);
    const awaited = all(compose, /^ {6}([a-z]+):\n {8}condition:/gm);
    expect(awaited.length).toBeGreaterThan(4);
    expect(awaited.filter((name) => !services.includes(name))).toEqual([]);
  });
  test('builds stages that deploy/Dockerfile has', () => {
    const stages = all(dockerfile, /^FROM \S+ AS (\w+)$/gm);
    const targets = all(compose, /target: (\w+)/g);
    expect(targets).toHaveLength(3);
    expect(targets.filter((name) => !stages.includes(name))).toEqual([]);
    expect(
      all(compose, /dockerfile: (\S+)/g).every((file) => existsSync(path.join(root, file))),
    ).toBe(true);
  });
  test('asks .env for exactly what deploy/env.example offers', () => {
    const asked = new Set(all(compose, /\$\{(\w+)/g));
    expect([...asked].sort()).toEqual(all(example, /^(\w+)=/gm).sort());
  });
  test('sets only what web, worker and launcher read', () => {
    const readers = ['apps/web/src/env.ts', 'apps/worker/src/env.ts', 'apps/launcher/src/env.ts'];
    const known = readers.map(read).join('\n');
    const set = all(compose, /^ {6}((?:DATABASE|REDIS|QUARTERMARK|PORT|POST_)\w*):/gm);
    expect(set.length).toBeGreaterThan(8);
    const ofProxy = all(read('deploy/Caddyfile'), /\{\$(\w+)\}/g);
    expect(set.filter((name) => !known.includes(name) && !ofProxy.includes(name))).toEqual([]);
  });
  test('gives the owner of the database to the step that prepares it alone', () => {
    expect(all(compose, /^ {6}(DATABASE_URL):/gm)).toHaveLength(1);
  });
  test('opens one port, on this machine alone unless told otherwise', () => {
    expect(all(compose, /- "(.*:443:443)"/g)).toEqual([`\${QUARTERMARK_BIND:-127.0.0.1}:443:443`]);
    expect(all(compose, /^ {4}(ports):$/gm)).toHaveLength(1);
  });
  test('mounts files and volumes that exist', () => {
    const mounted = all(compose, /- (\.?\/?[\w/]+):\/[\w/]+(?::ro)?$/gm);
    const named = all(compose.slice(compose.indexOf('\nvolumes:')), /^ {2}(\w+):$/gm);
    expect(mounted.length).toBeGreaterThan(3);
    const missing = mounted.filter((name) =>
      name.startsWith('.') ? !existsSync(path.join(root, name)) : !named.includes(name),
    );
    expect(missing).toEqual([]);
  });
});

describe('deploy/Dockerfile', () => {
  test('copies paths that exist, and the manifest of every workspace', () => {
    const copied = all(dockerfile, /^COPY (?!--)(.*) \S+$/gm).flatMap((list) => list.split(' '));
    expect(copied.filter((file) => !existsSync(path.join(root, file)))).toEqual([]);
    const lock = JSON.parse(read('package-lock.json')) as { packages: Record<string, unknown> };
    const workspaces = Object.keys(lock.packages).filter((n) => n && !n.includes('node_modules'));
    const manifests = workspaces.map((name) => `${name}/package.json`);
    expect(manifests.filter((file) => !copied.includes(file))).toEqual([]);
  });
  test('starts and builds with files that exist or are built', () => {
    const started = all(dockerfile, /CMD \["node", "(?:\.\.\/)*([^"]+)"/g);
    const building = all(dockerfile, /node (?:\.\.\/)*(\S+\.mjs|node_modules\S+)/g);
    expect([started.length, building.length]).toEqual([3, 2]);
    const missing = [...started, ...building].filter(
      (file) => !existsSync(path.join(root, BUILT[file] ?? file)),
    );
    expect(missing).toEqual([]);
  });
});
