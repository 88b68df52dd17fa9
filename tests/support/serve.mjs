import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';

// The app as `npm start` runs it, on a new folder of its own that is gone at the end. Two runs on one
// machine meet at the port, where the second is told so, and not in each other's data.
const folder = mkdtempSync(path.join(os.tmpdir(), 'quartermark-e2e-'));
// as root the database runs as somebody else, who has to reach it
chmodSync(folder, 0o711);
process.env.DATA_DIR = path.join(folder, 'data');
process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
await import('../../apps/launcher/src/start.mjs');
