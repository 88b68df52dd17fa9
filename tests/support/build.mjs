import os from 'node:os';
import path from 'node:path';
import { register } from 'tsx/esm/api';

// the launcher's own build, so that a start of the tests finds it done
register();
const { ensureBuilt } = await import('../../apps/launcher/src/build.ts');
await ensureBuilt({
  test: process.argv[2] === 'test',
  dataDir: path.join(os.tmpdir(), 'quartermark-build'),
  say: console.log,
});
