import path from 'node:path';
import { step } from './support/step.mjs';

// the gate that runs in seconds, the same here and in continuous integration
const root = path.resolve(import.meta.dirname, '..');
const bin = (name) => path.join(root, 'node_modules/.bin', name);

const steps = [
  ['types of packages, tests and tools', [bin('tsc'), '-p', 'tsconfig.json']],
  ['route types of the web app', [bin('next'), 'typegen'], 'apps/web'],
  ['types of the web app', [bin('tsc'), '-p', 'tsconfig.json', '--noEmit'], 'apps/web'],
  ['format and lint', [bin('biome'), 'check', '--error-on-warnings', '.']],
  ['lint that knows the types', [bin('oxlint'), '--type-aware', '--deny-warnings']],
  ['unused code and dependencies', [bin('knip'), '--no-progress']],
  ['rules of the house', [bin('vitest'), 'run', '--project', 'architecture', '--reporter=dot']],
];

let failed = 0;
for (const [name, command, folder = '.'] of steps) {
  const env = { NEXT_TELEMETRY_DISABLED: '1', NO_COLOR: '1' };
  if (!(await step(name, command, { cwd: path.join(root, folder), env }))) failed += 1;
}
console.log(failed === 0 ? 'check passed' : `check failed: ${failed} of ${steps.length} steps`);
process.exit(failed === 0 ? 0 : 1);
