import type { EntryInput } from '@quartermark/engine/log';

/** The car an entry is about, or else the component, tool or person, or else none of them. */
export type AboutWhat = { carId: string } | { gearId: string } | null;

/** @example aboutWhat({ kind: 'note', gear: 'g-1', … }) // { gearId: 'g-1' } */
export function aboutWhat(entry: EntryInput): AboutWhat {
  if (entry.car !== undefined) return { carId: entry.car };
  const part = entry.kind === 'fit' || entry.kind === 'measure' ? entry.component : undefined;
  const gearId = entry.gear ?? part;
  return gearId === undefined ? null : { gearId };
}

/** The page of what an entry is about, beneath the garage's; empty for the garage itself. */
export function pageOf(what: AboutWhat): string {
  if (what === null) return '';
  return 'carId' in what ? `/car/${what.carId}` : `/gear/${what.gearId}`;
}
