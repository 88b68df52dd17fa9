import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';

const SKIPPED = /^(node_modules|\.next.*|dist.*|next-env\.d\.ts|.*\.tsbuildinfo|.*\.test\.tsx?)$/;

/** One hash over all files below the given paths, by path and content. */
export function hashSources(root: string, places: string[]): string {
  const hash = createHash('sha256');
  for (const file of places.flatMap((place) => filesBelow(path.join(root, place))).sort()) {
    hash.update(path.relative(root, file)).update('\0');
    hash.update(readFileSync(file)).update('\0');
  }
  return hash.digest('hex');
}

function filesBelow(place: string): string[] {
  if (!existsSync(place)) return [];
  if (!statSync(place).isDirectory()) return [place];
  return readdirSync(place)
    .filter((name) => !SKIPPED.test(name))
    .flatMap((name) => filesBelow(path.join(place, name)));
}
