import type { ItemDraft } from '@quartermark/engine/log';
import type { Anchor } from '../car-log.ts';
import { type CarSheet, openCarSheet, writeNotes } from '../car-sheet.ts';
import { CLUB } from '../club.ts';
import { writeFuelStops } from '../fuel-stops.ts';
import { watchOil } from '../oil-watch.ts';
import type { SeedCar } from '../seed-garage.ts';

/** Nobody wrote down what the first instrument said when it came out. */
const FIRST_METER: readonly Anchor[] = [
  [-722, '11:00', 69_400],
  [-500, '10:00', 71_200],
  [-338, '09:00', 73_900],
];
const SECOND_METER: readonly Anchor[] = [
  [-330, '16:00', 12_050],
  [-60, '10:00', 14_700],
  [-2, '19:00', 15_420],
];
const isUnknown = (day: number) => day >= -338 && day <= -330;

const NOTES = [
  [-721, 'No book, no bills, one key. The seller knew nothing, or said so.'],
  [-715, 'Belt cover off far enough to look: no date on the belt, no paint on the tensioner.'],
  [-499, 'Filler plug first, then the drain. What came out had never been changed.'],
  [
    -329,
    'Instrument from a breaker in. Did not write down the old one before the battery was off.',
  ],
  [-61, 'Three quarters of a year on this oil, black but no metal.'],
] as const satisfies readonly (readonly [number, string])[];

const items = ({ on }: CarSheet): ItemDraft[] => [
  {
    name: 'Engine oil',
    role: 'engineOil',
    limits: [
      { measure: 'km', value: 5000, unit: 'mi' },
      { measure: 'months', value: 12 },
    ],
    source: "owner's own value",
  },
  {
    name: 'Oil filter',
    role: 'oilFilter',
    limits: [{ measure: 'km', value: 10_000, unit: 'mi' }],
    source: "owner's own value",
  },
  {
    name: 'Timing belt',
    limits: [
      { measure: 'km', value: 60_000, unit: 'mi' },
      { measure: 'months', value: 72 },
    ],
    leadDays: 10,
    source: "maker's manual of this invented car",
  },
  {
    name: 'Brake fluid, flush',
    role: 'brakeFluid',
    limits: [{ measure: 'months', value: 24 }],
    source: "maker's manual of this invented car",
  },
  {
    name: 'Coolant',
    limits: [{ measure: 'months', value: 48 }],
    source: "maker's manual of this invented car",
  },
  {
    name: 'Gearbox oil',
    limits: [{ measure: 'km', value: 40_000, unit: 'mi' }],
    source: "owner's own value",
  },
  {
    name: 'Spark plugs',
    limits: [{ measure: 'km', value: 20_000, unit: 'mi' }],
    baseline: { on: on(-900) },
    source: "owner's own value; the seller's friend remembers new plugs",
  },
  {
    name: 'Battery',
    limits: [{ measure: 'months', value: 60 }],
    baseline: { on: on(-720) },
    source: 'date on the battery',
  },
  {
    name: 'Road inspection',
    limits: [{ measure: 'date', value: on(9) }],
    baseline: { on: on(-356) },
    source: 'paper from the inspection',
  },
];

function writeOil(sheet: CarSheet): void {
  const { log, random } = sheet;
  const oil = watchOil(log, {
    random,
    spanL: 0.95,
    useLPer1000Km: 0.4,
    step: 0.25,
    unit: 'usQt',
    everyDays: [22, 38],
    product: 'Siltane 10W-40',
    condition: { state: 'cold' },
    notes: ['Smells of nothing in particular.'],
  });
  oil.regularly(-716, -10, isUnknown);
  for (const [day, number] of [[-700], [-320], [-60, 9001]] as const) {
    oil.changed(day, '10:00');
    log.record(
      { day, time: '10:00', number },
      {
        kind: 'oilChange',
        filled: { text: '4.5', unit: 'usQt' },
        filterRenewed: true,
        product: 'Siltane 10W-40',
        grade: '10W-40',
        odometer: log.odometer(day, '10:00'),
      },
    );
  }
  oil.write();
  writeFuelStops(log, {
    random,
    from: -718,
    to: -8,
    everyDays: [35, 60],
    volume: [8.5, 12.5],
    unit: 'usGal',
    octane: 95,
    skip: isUnknown,
  });
}

function writeTheRest({ log, service }: CarSheet): void {
  log.record(
    { day: -722, time: '11:00', number: 9003 },
    {
      kind: 'handover',
      what: 'bought',
      who: 'a private seller',
      odometer: log.odometer(-722, '11:00'),
      note: 'As it stands. Drives straight, smokes a little when cold.',
    },
  );
  service(-500, '10:00', [6], 'Gearbox oil, first that anyone wrote down.', 9002);
  log.record(
    { day: -338, time: '09:00', number: 9009 },
    { kind: 'odometer', odometer: log.odometer(-338, '09:00'), driver: CLUB.drivers[0] },
  );
  log.record(
    { day: -330, time: '16:00', number: 9010 },
    {
      kind: 'meterReplaced',
      meter: 'odometer',
      newFirst: { text: '12,050', unit: 'mi' },
      note: 'The old last value is not known. Somewhere above 73,900.',
    },
  );
  log.record(
    { day: -2, time: '19:00', number: 9060 },
    { kind: 'odometer', odometer: log.odometer(-2, '19:00') },
  );
  log.record(
    { day: -2, time: '19:10', number: 9061 },
    {
      kind: 'oilCheck',
      level: { how: 'fraction', fraction: 0.25, step: 0.25 },
      condition: { state: 'cold' },
    },
  );
  log.record(
    { day: -2, time: '19:30', number: 9062 },
    { kind: 'oilTopUp', volume: { text: '0.5', unit: 'usQt' }, product: 'Siltane 10W-40' },
  );
}

/** Bought with no papers, then given an instrument whose start nobody can tie to the old one. */
export function boughtUsed(day: string): SeedCar {
  const sheet = openCarSheet({
    day,
    key: 'used',
    carNumber: 6,
    car: {
      name: 'Lumeck Farro',
      unit: 'mi',
      odoDigits: 6,
      profile: {
        drive: 'combustion',
        fuel: 'petrol',
        octane: 95,
        wheelFixing: 'bolt',
        oilSpanL: 0.95,
        oilCapacityL: 4.3,
        dipstick: { state: 'cold' },
      },
    },
    meters: [FIRST_METER, SECOND_METER],
  });
  writeOil(sheet);
  writeTheRest(sheet);
  writeNotes(sheet.log, NOTES);
  return sheet.finish(items(sheet));
}
