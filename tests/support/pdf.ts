import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';

/** Whether poppler-utils is installed; `npm test` installs it where it may. */
export const popplerIsHere = spawnSync('pdftotext', ['-v']).status === 0;

/** A page as it is printed: its size in points (1/72 in) and its text in the order of reading. */
export type PrintedPage = { widthPt: number; heightPt: number; text: string };

/**
 * Reads a PDF back.
 *
 * @throws where poppler-utils is missing or the file is none
 */
export function pagesOf(pdf: Uint8Array): PrintedPage[] {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'quartermark-pdf-'));
  try {
    const file = path.join(folder, 'printed.pdf');
    writeFileSync(file, pdf);
    const sizes = [
      ...run('pdfinfo', ['-f', '1', '-l', '-1', file]).matchAll(
        /^Page\s+\d+ size:\s+([\d.]+) x ([\d.]+) pts/gm,
      ),
    ];
    // a form feed ends each page
    const texts = run('pdftotext', [file, '-']).split('\f');
    return sizes.map(([, width, height], at) => ({
      widthPt: Number(width),
      heightPt: Number(height),
      text: (texts[at] ?? '').replace(/\s+/g, ' ').trim(),
    }));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function run(command: string, args: readonly string[]): string {
  const { status, stdout, stderr } = spawnSync(command, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`${command} failed: ${stderr}`);
  return stdout;
}
