import path from 'node:path';
import { Copy } from './copy.ts';
import type { Fault } from './fault.ts';
import { FAULTS } from './faults/index.ts';
import { runTests } from './run-tests.ts';

/**
 * Plants each fault by itself in a copy of the project and asks whether the test that is named beside it
 * turns red there. First of all every named test has to be green without any fault.
 *
 * @param only a part of the names; without it every fault is planted
 * @returns whether every fault was caught
 */
export async function prove(only?: string): Promise<boolean> {
  const faults = FAULTS.filter(({ name }) => only === undefined || name.includes(only));
  if (faults.length === 0) throw new Error(`no fault has "${only}" in its name`);
  const copy = Copy.make(path.resolve(import.meta.dirname, '../..'));
  process.once('exit', () => copy.remove());
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => process.exit(1));

  if (!(await greenWithout(copy, faults))) return false;
  let caught = 0;
  for (const fault of faults) if (await isCaught(copy, fault)) caught += 1;
  console.log(`${faults.length} faults, ${caught} caught`);
  return caught === faults.length;
}

async function greenWithout(copy: Copy, faults: readonly Fault[]): Promise<boolean> {
  const began = performance.now();
  const tests = faults.map(({ test }) => test);
  const verdicts = await runTests(copy.folder, tests);
  const red = verdicts.flatMap(({ is, because }, at) =>
    is === 'passed' ? [] : [`  ${tests[at]?.name} (${tests[at]?.file}): ${is} ${because}`],
  );
  const time = secondsSince(began);
  if (red.length === 0) {
    console.log(`ok      the named tests are green as long as nothing is planted (${time})`);
    return true;
  }
  console.log(`FAILED  ${red.length} of the named tests are not green to begin with (${time}):`);
  for (const line of red) console.log(line);
  console.log(`${faults.length} faults, 0 caught`);
  return false;
}

async function isCaught(copy: Copy, fault: Fault): Promise<boolean> {
  const began = performance.now();
  let is: string;
  let because: string;
  try {
    const restore = copy.plant(fault.edits);
    const [verdict] = await runTests(copy.folder, [fault.test]).finally(restore);
    is = verdict?.is ?? 'no verdict';
    because = verdict?.because ?? '';
  } catch (error) {
    is = 'could not be planted';
    because = error instanceof Error ? error.message : String(error);
  }
  const caught = is === 'failed';
  console.log(`${caught ? 'caught' : 'MISSED'}  ${fault.name} (${secondsSince(began)})`);
  console.log(`        ${fault.test.file}: ${fault.test.name}`);
  console.log(`        ${caught ? '' : `${is}: `}${because}`);
  return caught;
}

const secondsSince = (began: number) => `${((performance.now() - began) / 1000).toFixed(1)} s`;
