import type { EntryOf, Pressure } from '@quartermark/engine/log';
import { quantity, type TypedText } from './typed.ts';

export type Corner = NonNullable<EntryOf<'wheels'>['which']>[number];

/** As one stands behind the car. */
export const CORNERS = [
  { value: 'frontLeft', words: 'Front left' },
  { value: 'frontRight', words: 'Front right' },
  { value: 'rearLeft', words: 'Rear left' },
  { value: 'rearRight', words: 'Rear right' },
] as const satisfies readonly { value: Corner; words: string }[];

export const ALL_CORNERS: readonly Corner[] = CORNERS.map(({ value }) => value);

/** A quantity at each corner; not every one need be read. */
export type CornerFields = Record<Corner, TypedText>;
type Stored = Partial<Record<Corner, Pressure>> | undefined;

export function emptyCorners(unit: string): CornerFields {
  const none = () => ({ text: '', unit });
  return { frontLeft: none(), frontRight: none(), rearLeft: none(), rearRight: none() };
}

export const cornerFields = (stored: Stored, empty: CornerFields): CornerFields => ({
  ...empty,
  ...stored,
});

/** The corners that were read; undefined where none was. */
export function readCorners(fields: CornerFields): Partial<CornerFields> | undefined {
  const read = ALL_CORNERS.filter((corner) => quantity(fields[corner]));
  if (read.length === 0) return undefined;
  return Object.fromEntries(read.map((corner) => [corner, fields[corner]]));
}
