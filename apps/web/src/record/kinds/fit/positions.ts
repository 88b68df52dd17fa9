import type { ComponentSort } from '@quartermark/engine/log';
import { CORNERS } from '../../corners.ts';

export type Position = { id: string; words: string };

const AXLES: readonly Position[] = [
  { id: 'front', words: 'Front axle' },
  { id: 'rear', words: 'Rear axle' },
];
const WHEELS: readonly Position[] = CORNERS.map(({ value, words }) => ({ id: value, words }));

/** Where a part of a sort can be on a car; none where there is only one place for it. */
export function positionsOf(sort: ComponentSort | null): readonly Position[] {
  switch (sort) {
    case 'tyreSet':
    case 'wheelSet':
    case 'pads':
    case 'discs':
      return AXLES;
    case 'clutch':
    case 'engine':
    case 'gearbox':
      return [];
    case 'other':
    case null:
      return WHEELS;
  }
}

const ALL = [...AXLES, ...WHEELS];

/** Those of the sort, and whatever else is written down already. */
export function positionRows(
  sort: ComponentSort | null,
  written: readonly string[],
): readonly Position[] {
  const usual = positionsOf(sort);
  const others = written.filter((id) => !usual.some((position) => position.id === id));
  return [
    ...usual,
    ...others.map((id) => ALL.find((position) => position.id === id) ?? { id, words: id }),
  ];
}

/** Parts that are run in before they are used hard. */
export const isBedded = (sort: ComponentSort | null): boolean =>
  sort === 'pads' || sort === 'discs' || sort === 'clutch';
