import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Edit } from './fault.ts';

/**
 * Files as they stand in a folder, and as a fault's exchanges would leave them; nothing is written.
 *
 * @throws Error where the text to find does not stand in its file exactly once
 */
export function exchanged(
  folder: string,
  edits: readonly Edit[],
): { before: Map<string, string>; after: Map<string, string> } {
  const before = new Map<string, string>();
  const after = new Map<string, string>();
  for (const { file, find, replace } of edits) {
    const text = after.get(file) ?? readFileSync(path.join(folder, file), 'utf8');
    const parts = text.split(find);
    if (parts.length !== 2)
      throw new Error(
        `in ${file} the text to exchange stands ${parts.length - 1} times, it should be once: ${find.trim()}`,
      );
    if (!before.has(file)) before.set(file, text);
    after.set(file, parts.join(replace));
  }
  return { before, after };
}
