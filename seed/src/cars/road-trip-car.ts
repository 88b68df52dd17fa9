import type { ItemDraft } from '@quartermark/engine/log';
import type { Anchor } from '../car-log.ts';
import { type CarSheet, openCarSheet, writeNotes } from '../car-sheet.ts';
import { CLUB } from '../club.ts';
import { writeFuelStops } from '../fuel-stops.ts';
import { watchOil } from '../oil-watch.ts';
import type { SeedCar } from '../seed-garage.ts';

const METER: readonly Anchor[] = [
  [-715, '10:00', 61_000],
  [-520, '10:00', 66_400],
  [-300, '06:00', 72_100],
  [-296, '21:00', 74_000],
  [-160, '10:00', 78_000],
  [-150, '06:00', 78_150],
  [-147, '21:00', 79_550],
  [-40, '06:00', 79_900],
  [-38, '21:00', 81_050],
  [-1, '10:00', 81_200],
];

/** Road trips: first day, last day, km, note. */
const TRIPS: readonly (readonly [number, number, number, string])[] = [
  [-300, -296, 1_900, 'Over the passes and back. One litre of oil in five days.'],
  [-150, -147, 1_400, 'To the coast with everything in it. Ran at 92 C all the way.'],
  [-40, -38, 1_150, 'Three days, two of them wet. Wipers smear on the right.'],
];
const onTrip = (day: number) => TRIPS.some(([from, to]) => day >= from && day <= to);

const NOTES = [
  [-712, 'Tyre pressures for two and luggage are on the door pillar. Copied to the spec sheet.'],
  [-410, 'Boost hose clip had a quarter turn left. Now it has none.'],
  [-95, 'Battery 12.5 V after a week standing. Good enough.'],
  [-37, 'Back home. Flies off the radiator with the soft brush, not the hose.'],
] as const satisfies readonly (readonly [number, string])[];

const items = ({ on }: CarSheet): ItemDraft[] => [
  {
    name: 'Engine oil',
    role: 'engineOil',
    limits: [
      { measure: 'km', value: 12_000, unit: 'km' },
      { measure: 'months', value: 12 },
    ],
    source: "maker's manual of this invented car",
  },
  {
    name: 'Oil filter',
    role: 'oilFilter',
    limits: [
      { measure: 'km', value: 12_000, unit: 'km' },
      { measure: 'months', value: 12 },
    ],
    source: "maker's manual of this invented car",
  },
  {
    name: 'Brake fluid, flush',
    role: 'brakeFluid',
    limits: [{ measure: 'months', value: 24 }],
    source: "maker's manual of this invented car",
  },
  {
    name: 'Spark plugs',
    limits: [{ measure: 'km', value: 40_000, unit: 'km' }],
    baseline: { on: on(-715), odometer: { text: '61000', unit: 'km' } },
    source: "owner's own value",
  },
  {
    name: 'Cabin filter',
    limits: [{ measure: 'months', value: 24 }],
    dueSince: on(-12),
    source: "owner's own value",
  },
  {
    name: 'Road inspection',
    limits: [{ measure: 'date', value: on(95) }],
    source: 'paper from the inspection',
  },
];

function writeDriving({ log, on }: CarSheet): void {
  for (const [day, until, km, note] of TRIPS)
    log.record(
      { day, time: '06:30', recordedDay: until },
      {
        kind: 'drive',
        use: 'touring',
        until: on(until),
        distance: { text: km.toLocaleString('en-GB'), unit: 'km' },
        driver: CLUB.drivers[0],
        note,
      },
    );
  // written down by both who sat in it
  for (const number of [9021, 9022])
    log.record(
      { day: -5, time: '17:00', number },
      { kind: 'drive', use: 'road', distance: { text: '12', unit: 'km' } },
    );
  for (const [day, number] of [
    [-36, 9011],
    [-8, 9012],
  ] as const)
    log.record(
      { day, time: '10:00', number },
      {
        kind: 'session',
        use: 'autocross',
        sessions: 1,
        venue: CLUB.autocross,
        driver: CLUB.drivers[1],
        note: 'On the set from the hatch.',
      },
    );
}

function writeWork({ log, item, service }: CarSheet): void {
  for (const [day, number] of [[-520], [-160, 9001]] as const)
    log.record(
      { day, time: '10:00', number },
      {
        kind: 'oilChange',
        filled: { text: '4.8', unit: 'l' },
        drained: { text: '4.1', unit: 'l' },
        filterRenewed: true,
        product: 'Siltane 5W-40',
        grade: '5W-40',
        odometer: log.odometer(day, '10:00'),
      },
    );
  service(-400, '10:00', [3], 'Fluid by the book, two years.');
  log.record(
    { day: -715, time: '11:00' },
    {
      kind: 'handover',
      what: 'bought',
      who: 'a dealer in the next town',
      note: 'One folder, two keys.',
    },
  );
  log.record({ day: -20, time: '18:00' }, { kind: 'handover', what: 'lent', who: CLUB.drivers[2] });
  log.record(
    { day: -14, time: '19:00' },
    { kind: 'handover', what: 'returned', who: CLUB.drivers[2], note: 'Full tank, washed.' },
  );
  log.record(
    { day: -13, time: '09:00', number: 9101 },
    {
      kind: 'finding',
      what: 'Stone chip in the screen, right of the wiper',
      severity: 'watch',
      note: 'Marked both ends with a pencil. Longer next week means a new screen.',
    },
  );
  log.record(
    { day: -180, time: '10:00' },
    {
      kind: 'service',
      items: [item(3)],
      note: 'Reservoir topped by nobody, level unchanged. Bled once round.',
    },
  );
}

/** A turbocharged car for long roads, borrowed by everybody. */
export function roadTripCar(day: string): SeedCar {
  const sheet = openCarSheet({
    day,
    key: 'trip',
    carNumber: 8,
    car: {
      name: 'Velmora Quist',
      unit: 'km',
      odoDigits: 6,
      profile: {
        sump: 'wet',
        induction: 'forced',
        drive: 'combustion',
        fuel: 'petrol',
        octane: 98,
        gearbox: 'six-speed manual',
        wheelFixing: 'bolt',
        oilSpanL: 1,
        oilCapacityL: 4.8,
        dipstick: { state: 'hotStopped', minutesAfterStop: 5 },
        oilGrade: '5W-40',
      },
    },
    meters: [METER],
  });
  writeDriving(sheet);
  writeWork(sheet);
  const { log, random } = sheet;
  const oil = watchOil(log, {
    random,
    spanL: 1,
    useLPer1000Km: 0.5,
    step: 0.25,
    unit: 'l',
    everyDays: [8, 13],
    product: 'Siltane 5W-40',
    condition: { state: 'hotStopped', minutesAfterStop: 5 },
    notes: ['At the pump, five minutes after stopping.'],
  });
  oil.regularly(-714, -3, onTrip);
  for (const day of [-520, -160]) oil.changed(day, '10:00');
  oil.write();
  writeFuelStops(log, {
    random,
    from: -712,
    to: -5,
    everyDays: [14, 22],
    volume: [34, 52],
    unit: 'l',
    octane: 98,
    skip: onTrip,
  });
  writeNotes(log, NOTES);
  log.record(
    { day: -1, time: '10:00', number: 9060 },
    { kind: 'odometer', odometer: log.odometer(-1, '10:00') },
  );
  return sheet.finish(items(sheet));
}
