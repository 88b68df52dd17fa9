import type { ItemDraft } from '@quartermark/engine/log';
import type { Anchor } from '../car-log.ts';
import { type CarSheet, openCarSheet, writeNotes } from '../car-sheet.ts';
import { CLUB } from '../club.ts';
import { writeFuelStops } from '../fuel-stops.ts';
import { watchOil } from '../oil-watch.ts';
import type { SeedCar } from '../seed-garage.ts';

/** The first instrument stopped at 98,400 km; the new one began at zero. */
const FIRST_METER: readonly Anchor[] = [
  [-730, '09:00', 76_900],
  [-700, '10:00', 78_000],
  [-640, '10:00', 81_500],
  [-610, '06:00', 82_900],
  [-608, '21:00', 83_500],
  [-430, '06:00', 90_300],
  [-427, '21:00', 91_250],
  [-380, '10:00', 92_800],
  [-300, '15:00', 98_400],
];
const SECOND_METER: readonly Anchor[] = [
  [-300, '15:10', 0],
  [-200, '10:00', 2_900],
  [-185, '06:00', 3_300],
  [-184, '21:00', 3_950],
  [-96, '06:00', 5_350],
  [-95, '21:00', 5_860],
  [-34, '06:00', 6_420],
  [-32, '21:00', 7_150],
  [-1, '17:00', 7_600],
];

/** Trips with the trailer on: first day, last day, km, note, number of the record. */
const TRIPS: readonly (readonly [number, number, number, string, number?])[] = [
  [-610, -608, 540, 'Trailer out and back, circuit car on it. Coupling warm, not hot.'],
  [-430, -427, 880, 'Long one with the trailer. Fan cut in on every hill.'],
  [-185, -184, 620, 'Collected the spare engine. Straps checked at every stop.', 9021],
  [-96, -95, 480, 'Trailer to the drag strip and home.', 9022],
  [-34, -32, 700, 'Two cars, two runs, one wet night.', 9023],
];
const onTrip = (day: number) => TRIPS.some(([from, to]) => day >= from && day <= to);

const NOTES = [
  [-708, 'Trailer brake cable adjusted, both sides even.'],
  [-699, 'Filter housing seal is the thin one. Wrote the size on the shelf edge.'],
  [-452, 'Chocks live behind the seat from now on. No more borrowed bricks.'],
  [
    -380,
    'No oil filter on the shelf today. Oil is new, the old filter stays in. Do not forget it.',
  ],
  [-301, 'Instrument dead in the cold, then back, then dead. Wrote down 98,400 while it showed.'],
  [-120, 'Leak under the car was the neighbour. Cardboard clean for a week.'],
  [-31, 'Coupling ball scored, dressed with a file, greased. Watch it.'],
] as const satisfies readonly (readonly [number, string])[];

const items = ({ on }: CarSheet): ItemDraft[] => [
  {
    name: 'Engine oil',
    role: 'engineOil',
    limits: [
      { measure: 'km', value: 15_000, unit: 'km' },
      { measure: 'months', value: 12 },
    ],
    source: "maker's manual of this invented car",
  },
  {
    name: 'Oil filter',
    role: 'oilFilter',
    limits: [
      { measure: 'km', value: 15_000, unit: 'km' },
      { measure: 'months', value: 12 },
    ],
    leadDays: 3,
    source: "maker's manual of this invented car",
  },
  {
    name: 'Fuel filter',
    limits: [
      { measure: 'km', value: 30_000, unit: 'km' },
      { measure: 'months', value: 24 },
    ],
    source: "maker's manual of this invented car",
  },
  {
    name: 'Timing belt and tensioner',
    limits: [
      { measure: 'km', value: 120_000, unit: 'km' },
      { measure: 'months', value: 96 },
    ],
    leadDays: 14,
    source: "maker's manual of this invented car",
  },
  {
    name: 'Coupling, clean and grease',
    limits: [{ measure: 'days', value: 90 }],
    source: "owner's own value",
  },
  {
    name: 'Gearbox oil',
    limits: [
      { measure: 'km', value: 60_000, unit: 'km', weights: { touring: 2 } },
      { measure: 'months', value: 48 },
    ],
    source: "owner's own value: a kilometre with the trailer counts twice",
  },
  {
    name: 'Coolant',
    limits: [{ measure: 'months', value: 60 }],
    baseline: { on: on(-1200) },
    source: "maker's manual of this invented car",
  },
  {
    name: 'Brake fluid, flush',
    role: 'brakeFluid',
    limits: [{ measure: 'months', value: 24 }],
    source: "maker's manual of this invented car",
  },
  {
    name: 'Road inspection',
    limits: [{ measure: 'date', value: on(19) }],
    baseline: { on: on(-710) },
    source: 'paper from the inspection',
  },
  {
    name: 'Air filter',
    limits: [{ measure: 'km', value: 20_000, unit: 'km' }],
    source: "owner's own value",
  },
];

function writeTrips({ log, on }: CarSheet): void {
  for (const [from, to, km, note, number] of TRIPS)
    log.record(
      { day: from, time: '06:30', number, recordedDay: to },
      {
        kind: 'drive',
        use: 'touring',
        distance: { text: String(km), unit: 'km' },
        until: on(to),
        driver: CLUB.drivers[1],
        note,
      },
    );
}

function writeOil(sheet: CarSheet): void {
  const { log, random } = sheet;
  const oil = watchOil(log, {
    random,
    spanL: 1.4,
    useLPer1000Km: 0.08,
    step: 0.25,
    unit: 'l',
    everyDays: [6, 11],
    product: 'Siltane 5W-30',
    condition: { state: 'cold' },
    notes: ['Cold, after the night, as the manual of this car wants it.'],
  });
  const skip = (day: number) => onTrip(day) || day === -300;
  oil.regularly(-728, -5, skip);
  for (const [day, filterRenewed, number] of [
    [-700, true, 9003],
    [-380, false, 9001],
  ] as const) {
    oil.changed(day, '10:00');
    log.record(
      { day, time: '10:00', number },
      {
        kind: 'oilChange',
        filled: { text: '7.4', unit: 'l' },
        filterRenewed,
        product: 'Siltane 5W-30',
        grade: '5W-30',
        odometer: log.odometer(day, '10:00'),
        note: filterRenewed ? 'Oil and filter.' : 'Oil only, filter stays in, none on the shelf.',
      },
    );
  }
  oil.write();
  writeFuelStops(log, {
    random,
    from: -726,
    to: -3,
    everyDays: [9, 17],
    volume: [48, 71],
    unit: 'l',
    skip,
  });
}

function writeTheRest({ log, item, service }: CarSheet): void {
  log.record(
    { day: -380, time: '11:00', number: 9002 },
    { kind: 'service', items: [item(3)], note: 'Fuel filter, bled until it ran clear.' },
  );
  service(
    -640,
    '10:00',
    [4],
    'Timing belt and tensioner, done by a workshop, paper in the folder.',
    9004,
  );
  for (const [day, number] of [[-520], [-430], [-340], [-260], [-170], [-80, 9005]] as const)
    log.record(
      { day, time: day === -430 ? '05:30' : '08:00', number },
      {
        kind: 'service',
        items: [item(5)],
        note: 'Coupling wiped dry, new grease, play within the mark.',
      },
    );
  service(
    -200,
    '10:00',
    [6, 10],
    'Gearbox oil and air filter. Filter was grey right through.',
    9006,
  );
  log.record(
    { day: -300, time: '15:10', number: 9010 },
    {
      kind: 'meterReplaced',
      meter: 'odometer',
      oldLast: { text: '98,400', unit: 'km' },
      newFirst: { text: '0', unit: 'km' },
      note: 'New instrument, starts at nothing. Old one kept, it still says 98,400 when it is warm.',
    },
  );
  log.record(
    { day: -3, time: '18:20', number: 9101 },
    {
      kind: 'finding',
      what: 'Brake hose cracked to the cord',
      where: 'rearLeft',
      severity: 'doNotDrive',
      note: 'Seen while greasing the coupling. Hose ordered, both sides.',
    },
  );
  log.record(
    { day: -1, time: '17:00', number: 9060 },
    { kind: 'odometer', odometer: log.odometer(-1, '17:00') },
  );
  log.record(
    { day: -1, time: '17:10', number: 9061 },
    {
      kind: 'oilCheck',
      level: { how: 'fraction', fraction: 1, step: 0.25 },
      condition: { state: 'cold' },
    },
  );
}

/** A diesel that pulls the club's trailer. Its instrument was exchanged and logged as such. */
export function towCar(day: string): SeedCar {
  const sheet = openCarSheet({
    day,
    key: 'tow',
    carNumber: 3,
    car: {
      name: 'Hobrand Mulligar',
      unit: 'km',
      odoDigits: 6,
      profile: {
        sump: 'wet',
        induction: 'forced',
        drive: 'combustion',
        fuel: 'diesel',
        gearbox: 'five-speed manual, low range',
        wheelFixing: 'stud',
        oilSpanL: 1.4,
        oilCapacityL: 7.4,
        dipstick: { state: 'cold' },
        oilGrade: '5W-30',
      },
    },
    meters: [FIRST_METER, SECOND_METER],
  });
  writeTrips(sheet);
  writeOil(sheet);
  writeTheRest(sheet);
  writeNotes(sheet.log, NOTES);
  return sheet.finish(items(sheet));
}
