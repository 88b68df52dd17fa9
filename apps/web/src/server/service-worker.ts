import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { distFolder } from '../env.ts';

/** What the pocket page is made of; maps and manifests are for developers. */
const WANTED = /\.(js|css|woff2)$/;

let made: string | undefined;

/**
 * The service worker of this build: which build it is, the files it keeps, then the script. Read once: a
 * build does not change while it runs.
 */
export function serviceWorker(): string {
  made ??= `const BUILD = ${JSON.stringify(buildOf(distFolder))};\n${script()}`;
  return made;
}

function script(): string {
  return readFileSync(
    path.join(/* turbopackIgnore: true */ process.cwd(), 'src/pocket/worker/sw.js'),
    'utf8',
  );
}

/** @param folder of the build, as `next build` leaves it */
export function buildOf(folder: string): { id: string; files: string[] } {
  const root = path.join(/* turbopackIgnore: true */ process.cwd(), folder);
  const id = readFileSync(path.join(root, 'BUILD_ID'), 'utf8').trim();
  const files = readdirSync(path.join(root, 'static'), { recursive: true, encoding: 'utf8' })
    .filter((name) => WANTED.test(name))
    .map((name) => `/_next/static/${name.split(path.sep).map(encodeURIComponent).join('/')}`);
  return { id, files: files.sort() };
}
