import type { EntryOf } from '@quartermark/engine/log';
import {
  ALL_CORNERS,
  type Corner,
  type CornerFields,
  cornerFields,
  emptyCorners,
} from '../../corners.ts';
import { type Start, usualUnits } from '../../start.ts';
import { type TypedText, typed } from '../../typed.ts';

type Tread = { corner: Corner; groove: string; depth: TypedText };
type Pads = { corner: Corner; inner: TypedText; outer: TypedText };
type Discs = { corner: Corner; thickness: TypedText; massG: string };

/**
 * The lists stand in the order in which they were stored; what may be read beyond that follows. A row in
 * which nothing stands is no reading.
 */
export type MeasureFields = {
  component: string;
  tread: Tread[];
  pads: Pads[];
  discs: Discs[];
  dateCode: string;
  cracks: string;
  batteryV: string;
  brakeFluidTest: string;
  oilPressureHotIdle: TypedText;
  oilPressureAtRpm: { pressure: TypedText; rpm: string };
  pressures: CornerFields;
};

/** Across the tread, as seen from the middle of the car. */
export const GROOVES = ['outer', 'middle', 'inner'] as const;

const mm = (): TypedText => ({ text: '', unit: 'mm' });
const noTread = (corner: Corner, groove: string): Tread => ({ corner, groove, depth: mm() });
const noPads = (corner: Corner): Pads => ({ corner, inner: mm(), outer: mm() });
const noDisc = (corner: Corner): Discs => ({ corner, thickness: mm(), massG: '' });

export function emptyMeasure(start: Start): MeasureFields {
  const noPressure = { text: '', unit: usualUnits(start).pressure };
  return {
    component: start.component ?? '',
    tread: ALL_CORNERS.flatMap((corner) => GROOVES.map((groove) => noTread(corner, groove))),
    pads: ALL_CORNERS.map(noPads),
    discs: ALL_CORNERS.map(noDisc),
    dateCode: '',
    cracks: '',
    batteryV: '',
    brakeFluidTest: '',
    oilPressureHotIdle: noPressure,
    oilPressureAtRpm: { pressure: noPressure, rpm: '' },
    pressures: emptyCorners(noPressure.unit),
  };
}

export function measureFields(entry: EntryOf<'measure'>, empty: MeasureFields): MeasureFields {
  const { tread = [], pads = [], discs = [], oilPressureAtRpm: atRpm } = entry;
  const unread = (of: readonly { corner: Corner }[]) =>
    ALL_CORNERS.filter((corner) => !of.some((row) => row.corner === corner));
  return {
    component: entry.component ?? '',
    tread: [
      ...tread.map(({ corner, groove = '', depth }) => ({ corner, groove, depth })),
      ...empty.tread.filter(
        (row) =>
          !tread.some(({ corner, groove }) => row.corner === corner && row.groove === groove),
      ),
    ],
    pads: [
      ...pads.map(({ corner, inner = mm(), outer = mm() }) => ({ corner, inner, outer })),
      ...unread(pads).map(noPads),
    ],
    discs: [
      ...discs.map(({ corner, thickness = mm(), massG }) => ({
        corner,
        thickness,
        massG: typed(massG),
      })),
      ...unread(discs).map(noDisc),
    ],
    dateCode: entry.dateCode ?? '',
    cracks: entry.cracks ?? '',
    batteryV: typed(entry.batteryV),
    brakeFluidTest: entry.brakeFluidTest ?? '',
    oilPressureHotIdle: entry.oilPressureHotIdle ?? empty.oilPressureHotIdle,
    oilPressureAtRpm: {
      pressure: atRpm?.pressure ?? empty.oilPressureAtRpm.pressure,
      rpm: typed(atRpm?.rpm),
    },
    pressures: cornerFields(entry.pressures, empty.pressures),
  };
}
