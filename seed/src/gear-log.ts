import type { EntryDraft } from '@quartermark/engine/log';
import { beforeEvents } from './before-events.ts';
import { CLUB } from './club.ts';
import { PIECE } from './gear.ts';
import { type GearEntry, gearSteps } from './gear-sheet.ts';
import { carId, gearId, gearItemId } from './record-id.ts';
import type { SeedStep } from './seed-garage.ts';

const FIRST = 9001;
const ALL_ROUND = ['front', 'rear'];
const km = (text: string) => ({ text, unit: 'km' as const });
const mm = (text: string) => ({ text, unit: 'mm' as const });

type Fitting = Pick<
  Extract<EntryDraft, { kind: 'fit' }>,
  'time' | 'odometer' | 'note' | 'condition' | 'bedding'
>;

const fit = (
  day: number,
  piece: number,
  car: number,
  change: 'on' | 'off',
  positions: string[],
  rest: Fitting = {},
): GearEntry => ({
  day,
  kind: 'fit',
  component: gearId(piece),
  car: carId(car),
  change,
  positions,
  ...rest,
});

/** Tread at both axles, left and right alike, in millimetres. */
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

/** What was fitted where and when, measured, looked over and lent: the garage's own book. */
export function gearLog(day: string): SeedStep[] {
  const { circuitSet, roadSet, autocrossSet, pads, extinguisher, lift } = PIECE;
  return gearSteps(day, CLUB.zone, FIRST, [
    fit(-72, circuitSet, 1, 'on', ALL_ROUND, {
      time: '07:00',
      odometer: km('31180'),
      condition: 'new',
      note: 'New set for the season.',
    }),
    tread(-72, '07:10', circuitSet, '6.5', '6.5'),
    fit(-44, circuitSet, 1, 'off', ALL_ROUND, { time: '18:00', odometer: km('31680') }),
    tread(-44, '18:30', circuitSet, '5.3', '5.6'),
    fit(-44, roadSet, 1, 'on', ALL_ROUND, { time: '18:40', condition: 'used' }),
    fit(-37, circuitSet, 7, 'on', ALL_ROUND, { time: '07:00', odometer: km('18400') }),
    fit(-9, circuitSet, 7, 'off', ALL_ROUND, { time: '18:00', odometer: km('19020') }),
    tread(-9, '18:20', circuitSet, '3.9', '4.4'),
    fit(-2, roadSet, 1, 'off', ALL_ROUND, { time: '06:30' }),
    fit(-2, circuitSet, 1, 'on', ALL_ROUND, { time: '07:00', odometer: km('32400') }),
    fit(-1, roadSet, 7, 'on', ALL_ROUND, { time: '12:00', note: 'So that it can be rolled.' }),
    fit(-120, autocrossSet, 4, 'on', ALL_ROUND, { time: '09:00', condition: 'new' }),
    fit(-64, autocrossSet, 4, 'off', ALL_ROUND, { time: '18:00' }),
    fit(-50, autocrossSet, 8, 'on', ALL_ROUND, { time: '18:00' }),
    fit(-1, pads, 7, 'on', ['front'], {
      time: '11:00',
      condition: 'new',
      bedding: 'notBedded',
      note: 'Backing plates clean, pins new. Bed them before anybody counts on them.',
    }),
    {
      day: -20,
      time: '09:00',
      kind: 'service',
      gear: gearId(extinguisher),
      items: [gearItemId(extinguisher, 1)],
      note: 'Needle in the green, pin in, sealed.',
    },
    {
      day: -5,
      time: '19:00',
      kind: 'finding',
      gear: gearId(lift),
      what: 'Cable of the rear left post: two broken wires',
      severity: 'beforeHardUse',
      note: 'Not lifted since. The fitter comes.',
    },
    ...beforeEvents,
  ]);
}
