import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readlinkSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { exchanged } from './exchanged.ts';
import type { Edit } from './fault.ts';

const OURS = '@quartermark';

/** The project as it stands on disk, copied: what is planted in it never touches the original. */
export class Copy {
  private constructor(readonly folder: string) {}

  static make(root: string): Copy {
    const folder = mkdtempSync(path.join(os.tmpdir(), 'quartermark-prove-'));
    // the database runs as another user where this one is root
    chmodSync(folder, 0o755);
    const files = filesOf(root);
    for (const file of files) {
      mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
      copyFileSync(path.join(root, file), path.join(folder, file));
    }
    linkModules(root, folder, files);
    return new Copy(folder);
  }

  /**
   * Makes a fault's exchanges. @returns how to undo them
   * @throws Error where the text to find does not stand in its file exactly once; nothing is changed then
   */
  plant(edits: readonly Edit[]): () => void {
    const { before, after } = exchanged(this.folder, edits);
    this.write(after);
    return () => this.write(before);
  }

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }

  private write(texts: ReadonlyMap<string, string>): void {
    for (const [file, text] of texts) writeFileSync(path.join(this.folder, file), text);
  }
}

/** What git keeps and what is new, as it stands on disk. */
function filesOf(root: string): string[] {
  const asked = ['ls-files', '--cached', '--others', '--exclude-standard', '-z'];
  const listed = spawnSync('git', asked, { cwd: root, encoding: 'utf8', maxBuffer: 2 ** 26 });
  if (listed.status !== 0)
    throw new Error(`could not list the files of ${root}: git says ${listed.stderr.trim()}`);
  return listed.stdout
    .split('\0')
    .filter((file) => file !== '' && existsSync(path.join(root, file)));
}

/** Other people's packages are shared with the original; our own point into the copy. */
function linkModules(root: string, folder: string, files: readonly string[]): void {
  const own = 'node_modules';
  mkdirSync(path.join(folder, own, OURS), { recursive: true });
  // folders with a dot are caches, but for the commands
  for (const name of readdirSync(path.join(root, own)))
    if (name !== OURS && (!name.startsWith('.') || name === '.bin'))
      symlinkSync(path.join(root, own, name), path.join(folder, own, name));
  for (const name of readdirSync(path.join(root, own, OURS)))
    symlinkSync(readlinkSync(path.join(root, own, OURS, name)), path.join(folder, own, OURS, name));
  for (const file of files.filter((one) => one.endsWith('/package.json'))) {
    const nested = path.join(path.dirname(file), own);
    if (existsSync(path.join(root, nested)))
      symlinkSync(path.join(root, nested), path.join(folder, nested));
  }
}
