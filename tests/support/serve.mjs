import { rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';

// The app as `npm start` runs it, on a folder of its own that is empty at the start and gone at the end.
const folder = path.join(os.tmpdir(), `quartermark-e2e-${process.env.PORT}`);
const empty = () => rmSync(folder, { recursive: true, force: true });
process.env.DATA_DIR = folder;
empty();
process.once('exit', empty);
await import('../../apps/launcher/src/start.mjs');
