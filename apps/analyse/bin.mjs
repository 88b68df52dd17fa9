#!/usr/bin/env node
// Loads the TypeScript sources in this very process, so that one command needs no build.
import { register } from 'tsx/esm/api';

register();
const { run } = await import('./src/run.ts');
const { readFileSync } = await import('node:fs');

const { stdout, stderr, exitCode } = run(process.argv.slice(2), (file) =>
  readFileSync(file, 'utf8'),
);
process.stdout.write(stdout);
process.stderr.write(stderr);
process.exitCode = exitCode;
