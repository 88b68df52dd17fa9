import type { Entry, EntryOf } from '../log/entry.ts';
import { depthMm } from '../log/quantity.ts';
import { sortEntries } from '../log/sort-entries.ts';
import type { MeasuredReading } from './result.ts';

export type MeasureEntry = EntryOf<'measure'> & Entry;

const CORNER_WORDS: Readonly<Record<MeasuredReading['corner'], string>> = {
  frontLeft: 'front left',
  frontRight: 'front right',
  rearLeft: 'rear left',
  rearRight: 'rear right',
};

/** Measurements of wear, in order: tread, pads, discs. Others (pressures, battery) are no wear. */
export function measurements(entries: readonly Entry[]): MeasureEntry[] {
  return sortEntries(entries.filter((entry) => entry.kind === 'measure'));
}

/** The readings of one measurement in SI, in the order they were written. */
export function readingsOf({ tread = [], pads = [], discs = [] }: MeasureEntry): MeasuredReading[] {
  return [
    ...tread.map(({ corner, groove, depth }) =>
      reading('tread', corner, depthMm(depth), groove ? `, ${groove}` : '', groove),
    ),
    ...pads.flatMap(({ corner, inner, outer }) => [
      ...(inner ? [reading('padInner', corner, depthMm(inner), ', inner')] : []),
      ...(outer ? [reading('padOuter', corner, depthMm(outer), ', outer')] : []),
    ]),
    ...discs
      .filter(({ thickness, massG }) => thickness !== undefined || massG !== undefined)
      .map(({ corner, thickness, massG }) => ({
        ...reading('disc', corner, thickness ? depthMm(thickness) : null),
        g: massG ?? null,
      })),
  ];
}

function reading(
  what: MeasuredReading['what'],
  corner: MeasuredReading['corner'],
  mm: number | null,
  behind = '',
  groove: string | null = null,
): MeasuredReading {
  return { what, corner, groove, where: `${CORNER_WORDS[corner]}${behind}`, mm, g: null };
}
