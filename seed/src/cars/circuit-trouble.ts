import type { CarSheet } from '../car-sheet.ts';
import { CLUB } from '../club.ts';

/** Off 16 days ago, looked over the next day; a boot that weeps since then; front wheels off and on. */
export function writeTrouble({ log }: CarSheet): void {
  const off = log.record(
    { day: -16, time: '14:10', number: 9101 },
    {
      kind: 'incident',
      what: 'off',
      detail: 'Both right wheels through the gravel, back on by itself.',
      driver: CLUB.drivers[1],
    },
  );
  log.record(
    { day: -15, time: '10:00', number: 9102 },
    {
      kind: 'answer',
      notice: off,
      answer: 'Looked over on the lift, gravel out of the duct.',
      checked: ['Wheels and tyres', 'Suspension and steering', 'Coolers and lines'],
    },
  );
  log.record(
    { day: -15, time: '10:30', number: 9103 },
    {
      kind: 'finding',
      what: 'Outer drive-shaft boot weeps grease',
      where: 'rearLeft',
      severity: 'beforeHardUse',
      note: 'Clip, not the boot, by the look of it.',
    },
  );
  log.record(
    { day: -30, time: '18:20', number: 9104 },
    { kind: 'wheels', change: 'off', which: ['frontLeft', 'frontRight'] },
  );
  log.record(
    { day: -29, time: '09:00', number: 9105 },
    {
      kind: 'wheels',
      change: 'torqued',
      which: ['frontLeft', 'frontRight'],
      torque: { text: '540', unit: 'nm' },
      cold: true,
    },
  );
  log.record(
    { day: -16, time: '10:05', number: 9106 },
    { kind: 'wheels', change: 'rechecked', which: ['frontLeft', 'frontRight'] },
  );
}
