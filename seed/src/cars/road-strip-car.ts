import type { ItemDraft } from '@quartermark/engine/log';
import type { Anchor } from '../car-log.ts';
import { type CarSheet, openCarSheet, writeNotes } from '../car-sheet.ts';
import { CLUB } from '../club.ts';
import { writeFuelStops } from '../fuel-stops.ts';
import { watchOil } from '../oil-watch.ts';
import type { SeedCar } from '../seed-garage.ts';

const METER: readonly Anchor[] = [
  [-730, '12:00', 15_200],
  [-590, '12:00', 16_700],
  [-470, '12:00', 16_900],
  [-345, '07:00', 18_040],
  [-343, '20:00', 18_460],
  [-276, '09:00', 18_900],
  [-100, '10:00', 21_300],
  [-1, '18:00', 22_850],
];

/** Evenings at the drag strip: day, passes, and the record's number where it is spoken of. */
const STRIP_DAYS: readonly (readonly [number, number, number?])[] = [
  [-675, 5],
  [-640, 6],
  [-612, 6],
  [-388, 6],
  [-360, 7],
  [-325, 6],
  [-269, 7, 9011],
  [-255, 8, 9012],
  [-241, 7, 9013],
  [-87, 6, 9014],
  [-59, 5, 9015],
  [-31, 7, 9016],
  [-10, 4, 9017],
];

const NOTES = [
  [-690, 'Belt dust on the tensioner bracket. Tension by the book, mark painted across the bolt.'],
  [-611, 'Last one of the year. Catch can a third full, emptied, no water in it.'],
  [-420, 'Boost hose clamp at the cooler had turned. Re-seated, torqued, marked.'],
  [-346, 'Bag packed for the coast: 1 qt, funnel, gloves, spare belt.'],
  [-277, 'Noise was the old belt. Two ribs cracked to the cord. New one goes on tomorrow.'],
  [-140, 'Left front tyre slow leak, valve core, done.'],
  [-30, 'Belt glazed on the inside after last night. Order one before the next evening.'],
] as const satisfies readonly (readonly [number, string])[];

const items = ({ on }: CarSheet): ItemDraft[] => [
  {
    name: 'Engine oil',
    role: 'engineOil',
    limits: [
      { measure: 'km', value: 4000, unit: 'mi', weights: { strip: 3 } },
      { measure: 'launches', value: 25 },
      { measure: 'months', value: 12 },
    ],
    source: "owner's own value",
  },
  {
    name: 'Oil filter',
    role: 'oilFilter',
    limits: [
      { measure: 'km', value: 4000, unit: 'mi' },
      { measure: 'months', value: 12 },
    ],
    source: "owner's own value",
  },
  {
    name: 'Brake fluid, flush',
    role: 'brakeFluid',
    limits: [{ measure: 'months', value: 24 }],
    source: "maker's manual of this invented car",
  },
  {
    name: 'Transmission oil',
    limits: [
      { measure: 'launches', value: 60 },
      { measure: 'months', value: 48 },
    ],
    source: "owner's own value",
  },
  {
    name: 'Spark plugs',
    limits: [{ measure: 'km', value: 12_000, unit: 'mi' }],
    leadDays: 4,
    source: "maker's manual of this invented car",
  },
  {
    name: 'Supercharger belt',
    limits: [{ measure: 'launches', value: 40 }],
    leadDays: 10,
    source: "owner's own value",
  },
  {
    name: 'Battery',
    limits: [{ measure: 'months', value: 48 }],
    baseline: { on: on(-600), historyComplete: true },
    source: "owner's own value",
  },
  {
    name: 'Coolant',
    limits: [{ measure: 'months', value: 36 }],
    baseline: { on: on(-1130) },
    source: "maker's manual of this invented car",
  },
  {
    name: 'Clutch fluid',
    limits: [{ measure: 'months', value: 24 }],
    source: "maker's manual of this invented car",
  },
  {
    name: 'Road inspection',
    limits: [{ measure: 'date', value: on(18) }],
    baseline: { on: on(-712) },
    source: 'paper from the inspection',
  },
];

function writeStripDays({ log, random }: CarSheet): void {
  const near = (middle: number, spread: number) =>
    Number((middle + (random() - 0.5) * spread).toFixed(3));
  for (const [day, count, number] of STRIP_DAYS) {
    log.record(
      { day, time: '18:30', number },
      {
        kind: 'strip',
        venue: CLUB.dragStrip,
        driver: CLUB.drivers[2],
        passes: Array.from({ length: count }, (_, index) => ({
          lane: index % 2 === 0 ? 'left' : 'right',
          reactionS: near(0.22, 0.2),
          at60ftS: near(1.86, 0.14),
          at8thS: near(7.9, 0.3),
          at4thS: near(12.3, 0.4),
          at4thKmh: near(183, 5),
        })),
        note: count > 6 ? 'Good air, kept lining up until they closed.' : undefined,
      },
    );
  }
}

function writeOil(sheet: CarSheet): void {
  const { log, random } = sheet;
  const oil = watchOil(log, {
    random,
    spanL: 0.95,
    useLPer1000Km: 0.28,
    step: 0.25,
    unit: 'usQt',
    everyDays: [6, 10],
    product: 'Siltane 5W-40',
    condition: { state: 'hotStopped', minutesAfterStop: 5 },
    notes: ['Five minutes after stopping.', 'From the bottle in the boot.'],
  });
  const skip = (day: number) =>
    (day >= -345 && day <= -343) || STRIP_DAYS.some(([stripDay]) => stripDay === day);
  oil.regularly(-727, -594, skip);
  oil.regularly(-466, -12, skip);
  for (const [day, number] of [[-655], [-468], [-290], [-100, 9001]] as const) {
    oil.changed(day, '10:00');
    log.record(
      { day, time: '10:00', number },
      {
        kind: 'oilChange',
        filled: { text: '7', unit: 'usQt' },
        filterRenewed: true,
        product: 'Siltane 5W-40',
        grade: '5W-40',
        odometer: log.odometer(day, '10:00'),
        note: 'Seven quarts, filter hand tight and a quarter turn, no drip after ten minutes.',
      },
    );
  }
  oil.write();
  writeFuelStops(log, {
    random,
    from: -724,
    to: -6,
    everyDays: [9, 16],
    volume: [9, 15.5],
    unit: 'usGal',
    octane: 98,
    skip: (day) => skip(day) || (day > -592 && day < -472),
  });
}

function writeTheRest({ log, on, service }: CarSheet): void {
  service(-715, '13:00', [3], 'Brake fluid, two bottles, clear at all four.', 9003);
  service(-276, '09:00', [4, 5, 6], 'Belt, plugs and transmission oil in one go.', 9002);
  log.record(
    { day: -345, time: '08:00', recordedDay: -343 },
    {
      kind: 'drive',
      use: 'touring',
      distance: { text: '380', unit: 'mi' },
      until: on(-343),
      driver: CLUB.drivers[0],
      note: 'Three days to the coast and back. Not a drop missing.',
    },
  );
  log.record(
    { day: -4, time: '09:00', number: 9061 },
    {
      kind: 'oilCheck',
      level: { how: 'fraction', fraction: 0.5, step: 0.25 },
      condition: { state: 'hotStopped', minutesAfterStop: 5 },
    },
  );
  log.record(
    { day: -4, time: '09:20', number: 9062 },
    { kind: 'oilTopUp', volume: { text: '0.5', unit: 'usQt' }, product: 'Siltane 5W-40' },
  );
  log.record(
    { day: -1, time: '18:00', number: 9060 },
    { kind: 'odometer', odometer: log.odometer(-1, '18:00') },
  );
}

/** A forced-induction road car that spends some evenings at the drag strip. Miles and US quarts. */
export function roadStripCar(day: string): SeedCar {
  const sheet = openCarSheet({
    day,
    key: 'strip',
    carNumber: 2,
    car: {
      name: 'Pellorin Duskar',
      unit: 'mi',
      odoDigits: 6,
      profile: {
        sump: 'wet',
        induction: 'forced',
        drive: 'combustion',
        fuel: 'petrol',
        octane: 98,
        gearbox: 'six-speed manual',
        wheelFixing: 'stud',
        discMaterial: 'iron',
        oilSpanL: 0.95,
        oilCapacityL: 6.6,
        dipstick: { state: 'hotStopped', minutesAfterStop: 5 },
        oilGrade: '5W-40',
      },
    },
    meters: [METER],
  });
  writeStripDays(sheet);
  writeOil(sheet);
  writeTheRest(sheet);
  writeNotes(sheet.log, NOTES);
  return sheet.finish(items(sheet));
}
