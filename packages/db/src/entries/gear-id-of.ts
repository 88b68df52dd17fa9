import type { EntryInput } from '@quartermark/engine/log';

/** The component, piece of equipment or person an entry is about; null where it is about none. */
export function gearIdOf(entry: EntryInput): string | null {
  if (entry.gear !== undefined) return entry.gear;
  return entry.kind === 'fit' || entry.kind === 'measure' ? (entry.component ?? null) : null;
}
