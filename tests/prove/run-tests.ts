import { spawn } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import type { Fault } from './fault.ts';

type Report = {
  testResults: {
    name: string;
    message: string;
    assertionResults: { fullName: string; status: string; failureMessages: string[] }[];
  }[];
};

export type Verdict = {
  /** `passed`, `failed`, or why there is neither */
  is: string;
  /** first line of the failure */
  because: string;
};

const LONGEST_MS = 180_000;

/**
 * Runs just these tests in a folder. @returns what became of each, in the same order; a test that did not
 * run, or whose name more than one test bears, has neither passed nor failed
 */
export async function runTests(
  folder: string,
  tests: readonly Fault['test'][],
): Promise<Verdict[]> {
  const report = path.join(folder, 'prove-report.json');
  rmSync(report, { force: true });
  const names = [...new Set(tests.map(({ name }) => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')))];
  const files = [...new Set(tests.map(({ file }) => file))];
  const said = await vitest(folder, [
    ...files,
    `--testNamePattern=(${names.join('|')})$`,
    '--reporter=json',
    `--outputFile=${report}`,
  ]);
  const none = { is: 'no test ran', because: said };
  if (!existsSync(report)) return tests.map(() => none);
  const { testResults } = JSON.parse(readFileSync(report, 'utf8')) as Report;
  return tests.map(({ file, name }) => {
    const result = testResults.find((one) => one.name === path.join(folder, file));
    const found = result?.assertionResults.filter((one) => one.fullName === name) ?? [];
    const [only] = found;
    if (!only) return { is: 'the test is not there', because: firstLine(result?.message ?? said) };
    if (found.length > 1) return { is: `${found.length} tests bear the name`, because: '' };
    return { is: only.status, because: firstLine(only.failureMessages[0] ?? '') };
  });
}

function vitest(folder: string, args: string[]): Promise<string> {
  const command = path.join(folder, 'node_modules/vitest/vitest.mjs');
  const child = spawn(process.execPath, [command, 'run', ...args], {
    cwd: folder,
    env: { ...process.env, NO_COLOR: '1' },
    stdio: ['ignore', 'pipe', 'pipe'],
    timeout: LONGEST_MS,
  });
  // a run that is broken off takes its tests along
  const kill = () => child.kill();
  process.once('exit', kill);
  let said = '';
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (data) => {
      said += data;
    });
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', () => {
      process.off('exit', kill);
      resolve(said.trim());
    });
  });
}

const firstLine = (text: string) => text.trim().split('\n')[0]?.slice(0, 160) ?? '';
