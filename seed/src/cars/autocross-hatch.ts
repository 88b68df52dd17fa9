import type { ItemDraft } from '@quartermark/engine/log';
import type { Anchor, EntryBody } from '../car-log.ts';
import { type CarSheet, openCarSheet, writeNotes } from '../car-sheet.ts';
import { CLUB } from '../club.ts';
import { writeFuelStops } from '../fuel-stops.ts';
import { watchOil } from '../oil-watch.ts';
import type { SeedCar } from '../seed-garage.ts';

const METER: readonly Anchor[] = [
  [-730, '10:00', 47_900],
  [-728, '09:00', 47_960],
  [-480, '12:00', 56_200],
  [-400, '10:00', 58_000],
  [-240, '09:00', 61_400],
  [-150, '10:00', 64_200],
  [-51, '08:00', 66_020],
  [-1, '12:00', 66_900],
];

/** Autocross days: day, km driven on the course (unknown where not written down), record's number. */
const AUTOCROSS_DAYS: readonly (readonly [number, number | null, number?])[] = [
  [-708, 5],
  [-680, 5],
  [-659, 6],
  [-631, null],
  [-603, 6],
  [-575, 6],
  [-421, 5],
  [-393, 6],
  [-365, null],
  [-344, 6],
  [-316, 6],
  [-288, 5],
  [-232, 6, 9011],
  [-225, 6, 9012],
  [-204, null, 9013],
  [-120, 6, 9021],
  [-92, 6, 9022],
  [-64, 6, 9023],
];

const NOTES = [
  [-707, 'Cone under the sill, no damage, orange paint polished off.'],
  [-574, 'Handbrake cable two turns. Last one of the year.'],
  [-470, 'Drain plug washer was crushed flat, new one, torque by the manual.'],
  [-343, 'Fuel smell after the hairpin. Cap seal. New cap seal.'],
  [-239, 'New front tyres scrubbed in on the road first, 40 km, then pressures.'],
  [-203, 'Right front wheel re-torqued cold the next morning. Had not moved.'],
  [-49, 'Yesterday the pencil slipped: the odometer says sixty-six thousand, not fifty-six.'],
  [-7, 'Bottom hose damp at the clip. One turn, then look again on Friday.'],
] as const satisfies readonly (readonly [number, string])[];

const items = ({ on }: CarSheet): ItemDraft[] => [
  {
    name: 'Engine oil',
    role: 'engineOil',
    limits: [
      { measure: 'km', value: 8000, unit: 'km', weights: { autocross: 5 } },
      { measure: 'months', value: 12 },
    ],
    source: "owner's own value",
  },
  {
    name: 'Oil filter',
    role: 'oilFilter',
    limits: [
      { measure: 'km', value: 8000, unit: 'km' },
      { measure: 'months', value: 12 },
    ],
    source: "owner's own value",
  },
  {
    name: 'Brake fluid, flush',
    role: 'brakeFluid',
    limits: [
      { measure: 'sessions', value: 18, weights: { road: 0, touring: 0, autocross: 0.3 } },
      { measure: 'months', value: 18 },
    ],
    source: "owner's own value",
  },
  {
    name: 'Front tyres, autocross set',
    limits: [{ measure: 'sessions', value: 12, weights: { road: 0, touring: 0 } }],
    leadDays: 7,
    source: "owner's own value",
  },
  {
    name: 'Gearbox oil',
    limits: [
      { measure: 'km', value: 40_000, unit: 'km' },
      { measure: 'months', value: 48 },
    ],
    source: "maker's manual of this invented car",
  },
  {
    name: 'Air filter',
    limits: [
      { measure: 'km', value: 20_000, unit: 'km' },
      { measure: 'months', value: 12 },
    ],
    source: "owner's own value",
  },
  {
    name: 'Battery',
    limits: [{ measure: 'months', value: 36 }],
    baseline: { on: on(-1076) },
    source: "owner's own value",
  },
  {
    name: 'Fire extinguisher, look over',
    limits: [{ measure: 'days', value: 30 }],
    source: "owner's own value",
  },
  {
    name: 'Accessory belt',
    limits: [
      { measure: 'km', value: 90_000, unit: 'km' },
      { measure: 'months', value: 72 },
    ],
    source: "maker's manual of this invented car",
  },
];

const runs = (sessions: number, km: number | null, note?: string): EntryBody => ({
  kind: 'session',
  use: 'autocross',
  sessions,
  venue: CLUB.autocross,
  driver: CLUB.drivers[3],
  distance: km === null ? undefined : { text: String(km), unit: 'km' },
  note,
});

function writeAutocrossDays({ log }: CarSheet): void {
  for (const [day, km, number] of AUTOCROSS_DAYS)
    log.record({ day, time: '10:00', number }, runs(1, km));
  const twice = log.record(
    { day: -64, time: '10:00', number: 9026, recordedDay: -64 },
    runs(1, 6, 'Sent from the phone, no idea whether it went through.'),
  );
  log.remove(-63, twice);
  const when = { day: -36, time: '10:00', number: 9024 };
  const miscounted = log.record({ ...when, recordedDay: -36 }, runs(2, null, 'Two sets of runs.'));
  log.amend(
    { ...when, recordedDay: -35 },
    miscounted,
    runs(1, null, 'One set of runs. The second was the other car.'),
  );
  log.record({ day: -8, time: '10:00', number: 9025 }, runs(1, null, 'Dusty, quick, nothing hit.'));
}

function writeOil(sheet: CarSheet): void {
  const { log, random } = sheet;
  const oil = watchOil(log, {
    random,
    spanL: 1,
    useLPer1000Km: 0.35,
    step: 0.25,
    unit: 'l',
    everyDays: [6, 10],
    product: 'Siltane 5W-40',
    condition: { state: 'cold' },
    notes: ['Cold, level floor.', 'Top-up bottle is in the left door.'],
  });
  const skip = (day: number) => AUTOCROSS_DAYS.some(([each]) => each === day);
  oil.regularly(-726, -3, (day) => skip(day) || day === -36 || day === -8);
  for (const [day, number] of [[-610], [-470], [-310], [-150, 9001]] as const) {
    oil.changed(day, '10:00');
    log.record(
      { day, time: '10:00', number },
      {
        kind: 'oilChange',
        filled: { text: '4,2', unit: 'l' },
        filterRenewed: true,
        product: 'Siltane 5W-40',
        grade: '5W-40',
        odometer: log.odometer(day, '10:00'),
        note: 'Oil and filter, new washer.',
      },
    );
  }
  oil.write();
  writeFuelStops(log, {
    random,
    from: -724,
    to: -5,
    everyDays: [11, 19],
    volume: [24, 39],
    unit: 'l',
    octane: 95,
    skip: (day) => skip(day) || day === -36 || day === -8,
  });
}

function writeTheRest({ log, item, service }: CarSheet): void {
  service(-728, '09:00', [5], 'Gearbox oil on the day it came into the garage.', 9004);
  service(-400, '10:00', [6], 'Air filter, full of course dust.', 9003);
  service(-240, '09:00', [3, 4], 'Front tyres and a brake flush for the autumn.', 9002);
  for (const [day, number] of [[-150], [-119], [-88], [-58], [-28, 9006]] as const)
    log.record(
      { day, time: '08:30', number },
      { kind: 'service', items: [item(8)], note: 'Pin, needle in the green, bracket tight.' },
    );
  log.record(
    { day: -50, time: '18:00', number: 9005 },
    { kind: 'odometer', odometer: { text: '56,037', unit: 'km' } },
  );
  log.record(
    { day: -1, time: '12:00', number: 9060 },
    { kind: 'odometer', odometer: log.odometer(-1, '12:00') },
  );
  log.record(
    { day: -1, time: '12:10', number: 9061 },
    {
      kind: 'oilCheck',
      level: { how: 'fraction', fraction: 0.75, step: 0.25 },
      condition: { state: 'cold' },
    },
  );
}

/** A small hatch for autocross and the daily road. One reading slipped; one entry was made twice. */
export function autocrossHatch(day: string): SeedCar {
  const sheet = openCarSheet({
    day,
    key: 'autocross',
    carNumber: 4,
    car: {
      name: 'Tovrik Pim',
      unit: 'km',
      odoDigits: 6,
      profile: {
        sump: 'wet',
        induction: 'natural',
        drive: 'combustion',
        fuel: 'petrol',
        octane: 95,
        gearbox: 'five-speed manual',
        wheelFixing: 'bolt',
        oilSpanL: 1,
        oilCapacityL: 4.2,
        dipstick: { state: 'cold' },
        oilGrade: '5W-40',
      },
    },
    meters: [METER],
  });
  writeAutocrossDays(sheet);
  writeOil(sheet);
  writeTheRest(sheet);
  writeNotes(sheet.log, NOTES);
  return sheet.finish(items(sheet));
}
