import path from 'node:path';
import { type Import, importsOf } from './imports.ts';
import { isCode, isTest, type Rule, type SourceFile } from './source-files.ts';

/**
 * Who may import whom, by folder; the longest folder that fits a file counts. A name ending in `*`
 * stands for the package with all its doors, `type:` allows types only.
 */
const MAY: Record<string, string[]> = {
  'packages/engine': [],
  'packages/digest': ['@quartermark/engine*'],
  'packages/db': ['@quartermark/engine*', '@quartermark/digest*'],
  'packages/jobs': ['@quartermark/db*', '@quartermark/engine*'],
  'packages/jobs/src/worker': [
    '@quartermark/db*',
    '@quartermark/engine*',
    '@quartermark/digest*',
    '@quartermark/post',
  ],
  'packages/post': [],
  'packages/api': [
    '@quartermark/db',
    '@quartermark/jobs/outbox',
    '@quartermark/engine*',
    '@quartermark/digest*',
  ],
  'packages/api/src/demo': [
    '@quartermark/db',
    '@quartermark/jobs/outbox',
    '@quartermark/engine*',
    '@quartermark/digest*',
    '@quartermark/seed',
  ],
  seed: ['@quartermark/engine*'],
  'apps/web': ['type:@quartermark/api/client', '@quartermark/engine*', '@quartermark/digest'],
  'apps/web/src/server': ['@quartermark/api*', '@quartermark/engine*'],
  'apps/web/src/app/api': ['@quartermark/api*', '@quartermark/engine*'],
  'apps/web/src/instrumentation.ts': ['@quartermark/api/server'],
  'apps/worker': ['@quartermark/jobs/worker'],
  'apps/launcher': ['@quartermark/db*', '@quartermark/jobs/migrate', '@quartermark/engine*'],
  'apps/analyse': ['@quartermark/engine*'],
};

/** Libraries of other people that a pure room may use; other rooms are held by their package.json. */
const OUTSIDE: Record<string, string[]> = {
  'packages/engine': ['zod', 'temporal-polyfill'],
  'packages/digest': [],
  seed: [],
};

export const importDirections: Rule = (files) =>
  files
    .filter((file) => isCode(file) && !isTest(file) && roomOf(file.path) !== null)
    .flatMap((file) =>
      importsOf(file).flatMap((one) => {
        const why = whyForbidden(file, one);
        return why === null ? [] : [`${file.path} imports ${one.from}: ${why}`];
      }),
    );

function whyForbidden(file: SourceFile, { from, typeOnly }: Import): string | null {
  const room = roomOf(file.path) ?? '';
  if (from.startsWith('.')) return whyRelative(file.path, from);
  if (!from.startsWith('@quartermark/')) {
    const allowed = OUTSIDE[room];
    if (allowed === undefined || allowed.includes(from)) return null;
    return `${room} may use ${allowed.join(', ') || 'no library'}`;
  }
  const ofOwn = from === nameOf(room) || from.startsWith(`${nameOf(room)}/`);
  if (ofOwn) return 'inside a package, import by relative path';
  const rules = MAY[placeOf(file.path)] ?? [];
  if (rules.some((rule) => fits(rule, from, typeOnly))) return null;
  return `${placeOf(file.path)} may import ${rules.join(', ') || 'nothing of ours'}`;
}

function whyRelative(file: string, from: string): string | null {
  const target = path.posix.join(path.posix.dirname(file), from);
  if (roomOf(target) !== roomOf(file)) return 'it leaves its own room';
  return /\.(ts|tsx|mjs|json|css|svg)$/.test(from) ? null : 'name the file with its ending';
}

function fits(rule: string, from: string, typeOnly: boolean): boolean {
  const [, types, name = ''] = /^(type:)?(.*)$/.exec(rule) ?? [];
  if (types !== undefined && !typeOnly) return false;
  if (!name.endsWith('*')) return from === name;
  const stem = name.slice(0, -1);
  return from === stem || from.startsWith(`${stem}/`);
}

function roomOf(file: string): string | null {
  return /^((?:apps|packages)\/[\w-]+|seed)\//.exec(file)?.[1] ?? null;
}

function placeOf(file: string): string {
  const places = Object.keys(MAY).filter((place) => file === place || file.startsWith(`${place}/`));
  return places.sort((a, b) => b.length - a.length)[0] ?? '';
}

const nameOf = (room: string) => `@quartermark/${room.split('/').at(-1)}`;
