import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { step } from './support/step.mjs';
import { ensureTools } from './support/tools.mjs';

// Everything there is, in order of cost. The last line is the sum:
// `N passed, N failed` and, where a test could not run here, `, N skipped`.
const root = path.resolve(import.meta.dirname, '..');
const bin = (name) => path.join(root, 'node_modules/.bin', name);
const inCi = Boolean(process.env.CI);
const folder = mkdtempSync(path.join(os.tmpdir(), 'quartermark-run-'));
const sum = { passed: 0, failed: 0, skipped: 0 };

const missing = ensureTools();
for (const tool of missing)
  console.log(
    `SKIPPED: ${tool.tests}, because ${tool.package} is missing (${tool.why}). Mend: apt-get install ${tool.package}`,
  );

const fail = (ok) => {
  if (!ok) sum.failed += 1;
};

/** Runs tests that write their counts to a file; a run that counts nothing has failed. */
async function counted(name, command, env = {}) {
  const file = path.join(folder, `${name.replace(/\W+/g, '-')}.json`);
  const ok = await step(name, command, {
    cwd: root,
    live: true,
    env: { ...env, QUARTERMARK_COUNTS: file },
  });
  const counts = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : null;
  if (counts === null || counts.passed + counts.failed === 0) {
    console.log(`FAILED ${name}: no test ran`);
    sum.failed += 1;
    return;
  }
  for (const key of ['passed', 'failed', 'skipped']) sum[key] += counts[key];
  if (!ok && counts.failed === 0) sum.failed += 1;
}

const build = (test) => [
  process.execPath,
  path.join(root, 'tests/support/build.mjs'),
  test ? 'test' : 'plain',
];

fail(await step('check', [process.execPath, path.join(root, 'tests/check.mjs')], { live: true }));
const built =
  (await step('test build of web and worker', build(true), { cwd: root })) &&
  (await step('plain build of web and worker', build(false), { cwd: root }));
fail(built);
await counted('unit, reference, integration and durability tests', [bin('vitest'), 'run']);
if (missing.some((tool) => tool.package === 'chromium')) sum.skipped += 1;
else if (built) await counted('browser journeys', [bin('playwright'), 'test']);

rmSync(folder, { recursive: true, force: true });
if (inCi && sum.skipped > 0)
  console.log(`FAILED: ${sum.skipped} skipped; in continuous integration nothing may be skipped`);
const skipped = sum.skipped > 0 ? `, ${sum.skipped} skipped` : '';
process.exitCode = sum.failed > 0 || sum.passed === 0 || (inCi && sum.skipped > 0) ? 1 : 0;
console.log(`${sum.passed} passed, ${sum.failed} failed${skipped}`);
