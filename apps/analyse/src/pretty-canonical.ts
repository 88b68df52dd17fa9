import { canonicalJson } from '@quartermark/engine';

/** Canonical JSON (sorted keys) indented by two spaces, with a newline at the end. */
export function prettyCanonical(value: unknown): string {
  return `${JSON.stringify(JSON.parse(canonicalJson(value)), null, 2)}\n`;
}
