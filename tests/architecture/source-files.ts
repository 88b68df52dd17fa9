import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

export const root = path.resolve(import.meta.dirname, '../..');

export type SourceFile = { path: string; text: string };
/** A rule reads files and names what breaks it, one line each; none means it holds. */
export type Rule = (files: SourceFile[]) => string[];

const PASSED_OVER =
  /^(node_modules|\.git|\.next.*|dist(-.*)?|test-results|quartermark-data|.*\.tsbuildinfo)$/;
const BINARY = /\.(png|jpe?g|ico|woff2?|gz|zip|pdf)$/;

/** All text files of the project, by walking its folders. */
export function readProject(): SourceFile[] {
  return walk('.').map((file) => ({
    path: file,
    text: readFileSync(path.join(root, file), 'utf8'),
  }));
}

function walk(folder: string): string[] {
  return readdirSync(path.join(root, folder), { withFileTypes: true }).flatMap((found) => {
    if (PASSED_OVER.test(found.name)) return [];
    const file = path.posix.join(folder, found.name);
    if (found.isDirectory()) return walk(file);
    return found.isFile() && !BINARY.test(found.name) ? [file] : [];
  });
}

/** What git keeps: a rule that saw less than this would prove nothing. */
export function trackedFiles(): string[] {
  const listed = spawnSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8' });
  if (listed.status !== 0) throw new Error(`git ls-files failed: ${listed.stderr}`);
  return listed.stdout.split('\0').filter((file) => file !== '' && !BINARY.test(file));
}

export const isCode = (file: SourceFile) => /\.(ts|tsx|mjs)$/.test(file.path);
export const isTest = (file: SourceFile) =>
  /\.(test|spec|setup)\.tsx?$/.test(file.path) || /^tests\/|^packages\/\w+\/test\//.test(file.path);

/** The text with comments blanked out; line numbers stay. */
export function withoutComments(text: string): string {
  return text
    .replace(/\/\*[\s\S]*?\*\//g, (comment) => comment.replace(/[^\n]/g, ' '))
    .replace(/(^|[\s;{}(),])\/\/[^\n]*/g, '$1');
}

/** `path:line` of each match of a pattern in code, comments left out. */
export function linesMatching(file: SourceFile, pattern: RegExp): string[] {
  return withoutComments(file.text)
    .split('\n')
    .flatMap((line, at) => (pattern.test(line) ? [`${file.path}:${at + 1}: ${line.trim()}`] : []));
}
