import { spawn } from 'node:child_process';
import { performance } from 'node:perf_hooks';

/**
 * Runs one command, shows its name and time, and its output where it failed (or always, with `live`).
 *
 * @param {string} name
 * @param {string[]} command
 * @param {{ live?: boolean, env?: NodeJS.ProcessEnv, cwd?: string }} [options]
 * @returns {Promise<boolean>} whether it succeeded
 */
export async function step(name, [command = '', ...args], { live = false, env, cwd } = {}) {
  const began = performance.now();
  const child = spawn(command, args, {
    cwd,
    env: { ...process.env, ...env },
    stdio: live ? 'inherit' : ['ignore', 'pipe', 'pipe'],
  });
  let output = '';
  child.stdout?.on('data', (data) => {
    output += data;
  });
  child.stderr?.on('data', (data) => {
    output += data;
  });
  const ok = await new Promise((resolve) => {
    child.once('error', (error) => {
      output += error.message;
      resolve(false);
    });
    child.once('close', (code) => resolve(code === 0));
  });
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  console.log(`${ok ? 'ok    ' : 'FAILED'} ${name} (${seconds} s)`);
  if (!ok && output !== '') console.log(output.trimEnd().replace(/^/gm, '       '));
  return ok;
}
