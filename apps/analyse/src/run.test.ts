import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { run } from './run.ts';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const example = (name: string) => `${root}examples/${name}.json`;
const fromText = (text: string) => () => text;
const fromDisk = (file: string) => readFileSync(file, 'utf8');

test.each(['log-1', 'due-1', 'oil-1'])(
  'run() reads the example of %s without a flag or note',
  (name) => {
    const { stdout, stderr, exitCode } = run([example(name)], fromDisk);
    expect({ stderr, exitCode }).toEqual({ stderr: '', exitCode: 0 });
    const document = JSON.parse(stdout);
    expect(document.flags ?? document.oil.notes).toEqual([]);
  },
);

test('run() prints one document with sorted keys, indented by two', () => {
  const text = '{"schema":1,"asOf":"2026-06-01","car":{"id":"c"}}';
  expect(run(['x.json'], fromText(text)).stdout).toMatch(
    /^\{\n {2}"asOf": "2026-06-01",\n {2}"car": "c",\n {2}"engineVersion": \d+,\n/,
  );
});

test('run() says of a book what stands open and where the car stands, of other shapes it cannot', () => {
  const book = JSON.parse(run([example('log-1')], fromDisk).stdout);
  expect(book.status).toBe('inUse');
  expect(book.matters.findings).toMatchObject([{ entry: 'e21', severity: 'beforeHardUse' }]);
  expect(book.matters).toMatchObject({
    incidents: [],
    wheels: { state: 'recheckDue', entry: 'e17', sinceSessions: 2 },
    wakeSteps: [],
  });
  const due = JSON.parse(run([example('due-1')], fromDisk).stdout);
  expect(Object.keys(due)).not.toEqual(expect.arrayContaining(['matters']));
});

test('run() adds the history where it is asked for, wherever the option stands', () => {
  const args = [example('due-1'), '--history'];
  expect(JSON.parse(run(args, fromDisk).stdout).history.odometer).toHaveLength(4);
  expect(run(args.toReversed(), fromDisk)).toEqual(run(args, fromDisk));
});

test.each([
  ['no file', [], /expected one file, got 0\nUsage/],
  ['two files', ['a', 'b'], /expected one file, got 2/],
  ['an unknown option', ['--all', 'a'], /unknown option --all\nUsage/],
])('run() with %s says how it is used', (_, args, message) => {
  const outcome = run(args, fromText('{}'));
  expect(outcome).toMatchObject({ stdout: '', exitCode: 2 });
  expect(outcome.stderr).toMatch(message);
});

test('run() says where a file stops being JSON, and how to mend it', () => {
  const { stderr, exitCode } = run(['log.json'], fromText('{"a": nope}'));
  expect(exitCode).toBe(2);
  expect(stderr).toMatch(/^log\.json is no JSON: .*Mend it at that place/);
});

test('run() names the file and the members of a shape it does not know', () => {
  const { stderr, exitCode } = run(['log.json'], fromText('{"cars": []}'));
  expect(exitCode).toBe(2);
  expect(stderr).toMatch(/^log\.json: could not tell the file's shape; its members: "cars"/);
});

test('run() takes a file with a byte order mark', () => {
  const text = '\uFEFF{"schema":1,"asOf":"2026-06-01"}';
  expect(run(['x'], fromText(text)).exitCode).toBe(0);
});

test('the command itself prints the document, and what went wrong apart from it', () => {
  const bin = `${root}apps/analyse/bin.mjs`;
  const good = spawnSync(process.execPath, [bin, example('oil-1')], { encoding: 'utf8' });
  expect(good).toMatchObject({ status: 0, stderr: '' });
  expect(JSON.parse(good.stdout).car).toBe('wren');
  const bad = spawnSync(process.execPath, [bin, `${root}no-such-file`], { encoding: 'utf8' });
  expect(bad).toMatchObject({ status: 2, stdout: '' });
  expect(bad.stderr).toMatch(/could not open .*no-such-file/);
}, 30_000);
