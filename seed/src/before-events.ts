import { PIECE } from './gear.ts';
import type { GearEntry } from './gear-sheet.ts';
import { carId, gearId } from './record-id.ts';

const HATCH = carId(4);
const TRIP = carId(8);
const ALL_ROUND = ['front', 'rear'];
const mm = (text: string) => ({ text, unit: 'mm' as const });

const on = (day: number, time: string, piece: number, car: string, positions: string[]) =>
  ({
    day,
    time,
    kind: 'fit',
    component: gearId(piece),
    car,
    change: 'on',
    positions,
    condition: 'new',
  }) as const;

/** Front pads, inner and outer, left and right alike, in millimetres. */
const pads = (
  day: number,
  time: string,
  piece: number,
  inner: string,
  outer: string,
): GearEntry => ({
  day,
  time,
  kind: 'measure',
  component: gearId(piece),
  pads: [
    { corner: 'frontLeft', inner: mm(inner), outer: mm(outer) },
    { corner: 'frontRight', inner: mm(inner), outer: mm(outer) },
  ],
});

const tread = (
  day: number,
  time: string,
  piece: number,
  front: string,
  rear: string,
): GearEntry => ({
  day,
  time,
  kind: 'measure',
  component: gearId(piece),
  tread: [
    { corner: 'frontLeft', depth: mm(front) },
    { corner: 'frontRight', depth: mm(front) },
    { corner: 'rearLeft', depth: mm(rear) },
    { corner: 'rearRight', depth: mm(rear) },
  ],
});

const wheels = (
  day: number,
  time: string,
  car: string,
  change: 'torqued' | 'rechecked',
  text: string,
): GearEntry => ({
  day,
  time,
  kind: 'wheels',
  car,
  change,
  torque: { text, unit: 'nm' },
  cold: true,
});

/** What was fitted, measured and torqued on the two cars that the club takes along everywhere. */
export const beforeEvents: readonly GearEntry[] = [
  { ...on(-160, '09:30', PIECE.tripPads, TRIP, ['front']), bedding: 'bedded' },
  pads(-160, '09:20', PIECE.tripPads, '12', '12'),
  pads(-50, '18:20', PIECE.tripPads, '11.2', '11.4'),
  pads(-9, '19:00', PIECE.tripPads, '10.7', '10.9'),
  tread(-50, '18:10', PIECE.autocrossSet, '5.6', '5.8'),
  tread(-9, '19:10', PIECE.autocrossSet, '5.1', '5.4'),
  wheels(-50, '18:30', TRIP, 'torqued', '120'),
  wheels(-37, '09:00', TRIP, 'rechecked', '120'),
  { ...on(-240, '09:10', PIECE.hatchPads, HATCH, ['front']), bedding: 'bedded' },
  pads(-240, '09:20', PIECE.hatchPads, '10', '10'),
  pads(-120, '18:20', PIECE.hatchPads, '7.4', '7.8'),
  pads(-9, '17:30', PIECE.hatchPads, '4.9', '5.4'),
  on(-64, '18:10', PIECE.hatchTyres, HATCH, ALL_ROUND),
  tread(-64, '18:20', PIECE.hatchTyres, '7.6', '7.6'),
  tread(-9, '17:40', PIECE.hatchTyres, '7.2', '7.3'),
  wheels(-64, '18:40', HATCH, 'torqued', '110'),
  wheels(-49, '09:00', HATCH, 'rechecked', '110'),
];
