import { type SourceFile, withoutComments } from './source-files.ts';

export type Import = { from: string; typeOnly: boolean };

const STATIC =
  /(?:^|[\n;}])\s*(import|export)\s+(type\s+)?(?:[\w*{}\s,$]+?\s+from\s+)?['"]([^'"\n]+)['"]/g;
const DYNAMIC = /\b(?:import|require)\(\s*['"]([^'"\n]+)['"]/g;

/** Everything a file imports or exports from elsewhere, static and dynamic. */
export function importsOf(file: SourceFile): Import[] {
  const text = withoutComments(file.text);
  const found: Import[] = [];
  for (const [, , type, from] of text.matchAll(STATIC))
    if (from !== undefined) found.push({ from, typeOnly: type !== undefined });
  for (const [, from] of text.matchAll(DYNAMIC))
    if (from !== undefined) found.push({ from, typeOnly: /\btypeof\s+import\(/.test(text) });
  return found;
}
