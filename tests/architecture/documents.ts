import type { Rule, SourceFile } from './source-files.ts';

const DOCUMENTS = /^(README|DEVELOPERS|CHANGELOG)\.md$/;
const TOP = /^(apps|packages|tests|seed|examples|deploy|docs|\.ci)\//;

/** Every path and every npm command that the documents name exists. */
export const documentsTellTheTruth: Rule = (files) => {
  const manifest = files.find((file) => file.path === 'package.json');
  const scripts = Object.keys(
    (JSON.parse(manifest?.text ?? '{}') as { scripts?: Record<string, string> }).scripts ?? {},
  );
  return files
    .filter((file) => DOCUMENTS.test(file.path))
    .flatMap((file) => [
      ...commandsIn(file)
        .filter((name) => !scripts.includes(name))
        .map((name) => `${file.path} names npm run ${name}, which does not exist`),
      ...pathsIn(file)
        .filter((name) => !exists(name, files))
        .map((name) => `${file.path} names ${name}, which does not exist`),
    ]);
};

function commandsIn(file: SourceFile): string[] {
  const run = [...file.text.matchAll(/\bnpm run ([\w:-]+)/g)].map(([, name]) => name ?? '');
  const short = [...file.text.matchAll(/\bnpm (start|test)\b/g)].map(([, name]) => name ?? '');
  return [...run, ...short];
}

function pathsIn(file: SourceFile): string[] {
  const quoted = [...file.text.matchAll(/`([^`\s]+)`/g)].map(([, word]) => word ?? '');
  const indented = file.text
    .split('\n')
    .filter((line) => /^ {4}\S/.test(line))
    .flatMap((line) => line.trim().split(/\s+/));
  const rootFile = /^[\w.-]+\.(md|json|yml|ts|mjs)$/;
  return [
    ...[...quoted, ...indented].filter((word) => TOP.test(word)),
    ...quoted.filter((word) => rootFile.test(word) && !word.startsWith('.')),
  ].filter((word) => !/[<>{}$]|\.\.\.|=/.test(word));
}

function exists(name: string, files: SourceFile[]): boolean {
  const plain = name.replace(/[),.;:]+$/, '').replace(/\/$/, '');
  const pattern = new RegExp(
    `^${plain.replace(/[.+?^()|[\]\\]/g, '\\$&').replace(/\*+/g, '[^/]*')}(/|$)`,
  );
  // a bare file name may be that of any folder: it is found by its name
  return files.some(({ path }) =>
    name.includes('/') ? pattern.test(path) : path === plain || path.endsWith(`/${plain}`),
  );
}
