import type { ItemDraft } from '@quartermark/engine/log';
import type { Anchor, EntryBody } from '../car-log.ts';
import { type CarSheet, openCarSheet, writeNotes } from '../car-sheet.ts';
import { CLUB } from '../club.ts';
import { writeFuelStops } from '../fuel-stops.ts';
import { watchOil } from '../oil-watch.ts';
import type { SeedCar } from '../seed-garage.ts';

const METER: readonly Anchor[] = [
  [-720, '10:00', 9_800],
  [-620, '10:00', 11_500],
  [-440, '10:00', 12_900],
  [-300, '10:00', 15_300],
  [-120, '10:00', 17_100],
  [-50, '10:00', 18_200],
  [-37, '07:00', 18_400],
  [-37, '18:00', 18_520],
  [-23, '07:00', 18_700],
  [-23, '18:00', 18_840],
  [-9, '07:00', 18_900],
  [-9, '18:00', 19_020],
  [-1, '10:00', 19_060],
];

/** Circuit days: day, stints, km a stint, number of the first stint's record. */
const CIRCUIT_DAYS: readonly (readonly [number, number, number, number?])[] = [
  [-660, 4, 24],
  [-632, 4, 25],
  [-408, 4, 24],
  [-352, 5, 24],
  [-37, 4, 25, 9011],
  [-23, 5, 24, 9021],
  [-9, 4, 25, 9031],
];
const STINT_TIMES = ['09:20', '10:50', '13:10', '14:40', '16:00'] as const;
const onCircuit = (day: number) => CIRCUIT_DAYS.some(([each]) => each === day);

const NOTES = [
  [-719, 'Came with a folder of bills. Read all of them, wrote the dates into the items.'],
  [-410, 'Alignment by string, both rears in by the same. Sheet is in the folder.'],
  [-49, 'New oil smells of nothing. Old one neither.'],
  [-8, 'Pedal comes back after a night. That proves nothing. Fluid first.'],
] as const satisfies readonly (readonly [number, string])[];

const items = ({ on }: CarSheet): ItemDraft[] => [
  {
    name: 'Engine oil',
    role: 'engineOil',
    limits: [
      { measure: 'km', value: 7000, unit: 'km', weights: { circuit: 6 } },
      { measure: 'months', value: 12 },
    ],
    source: "owner's own value",
  },
  {
    name: 'Oil filter',
    role: 'oilFilter',
    limits: [{ measure: 'months', value: 12 }],
    source: "owner's own value",
  },
  {
    name: 'Brake fluid, flush',
    role: 'brakeFluid',
    limits: [
      { measure: 'sessions', value: 18, weights: { road: 0, touring: 0 } },
      { measure: 'months', value: 12 },
    ],
    triggers: { incidents: ['softPedal'] },
    source: "owner's own value",
  },
  {
    name: 'Leak look at the new sump seal',
    limits: [{ measure: 'km', value: 50, unit: 'km' }],
    baseline: { on: on(-50), time: '10:00', odometer: { text: '18200', unit: 'km' } },
    once: true,
    source: "owner's own value",
  },
  {
    name: 'Transaxle oil',
    limits: [
      { measure: 'hours', value: 16, weights: { road: 0, touring: 0 } },
      { measure: 'months', value: 36 },
    ],
    source: "maker's manual of this invented car",
  },
  {
    name: 'Road inspection',
    limits: [{ measure: 'date', value: on(210) }],
    source: 'paper from the inspection',
  },
];

const stint = (km: number, driver: string | undefined): EntryBody => ({
  kind: 'session',
  use: 'circuit',
  sessions: 1,
  distance: { text: String(km), unit: 'km' },
  venue: CLUB.circuit,
  driver,
});

function writeCircuitDays({ log }: CarSheet): void {
  for (const [day, stints, km, number] of CIRCUIT_DAYS)
    for (const [index, time] of STINT_TIMES.slice(0, stints).entries())
      log.record(
        { day, time, number: number === undefined ? undefined : number + index },
        stint(km, CLUB.drivers[2 + (index % 2)]),
      );
  log.record(
    { day: -9, time: '16:30', number: 9101 },
    {
      kind: 'incident',
      what: 'softPedal',
      detail: 'Long pedal in the last braking zone, twice. Came in.',
      driver: CLUB.drivers[3],
    },
  );
}

function writeWork({ log, item, service }: CarSheet): void {
  service(-715, '10:00', [5], 'Transaxle oil, to know where it starts.');
  service(-440, '10:00', [3], 'Flush before the season.');
  service(-50, '11:00', [3], 'Fluid with the oil, one evening on the lift.', 9002);
  service(-36, '18:00', [4], 'Cardboard clean, seal dry. Done with that.', 9003);
  log.record(
    { day: -440, time: '12:00' },
    { kind: 'service', items: [item(5)], note: 'Transaxle oil again, magnet clean.' },
  );
  for (const [day, number] of [[-620], [-300], [-50, 9001]] as const)
    log.record(
      { day, time: '10:00', number },
      {
        kind: 'oilChange',
        filled: { text: '7.6', unit: 'l' },
        filterRenewed: true,
        product: 'Siltane 10W-50',
        grade: '10W-50',
        odometer: log.odometer(day, '10:00'),
      },
    );
  log.record(
    { day: -8, time: '18:00', number: 9102 },
    { kind: 'wheels', change: 'off', note: 'All four, to look at the hoses and the pads.' },
  );
  log.record(
    { day: -8, time: '18:40', number: 9103 },
    {
      kind: 'measure',
      pads: [
        {
          corner: 'frontLeft',
          inner: { text: '4.5', unit: 'mm' },
          outer: { text: '5', unit: 'mm' },
        },
        {
          corner: 'frontRight',
          inner: { text: '4', unit: 'mm' },
          outer: { text: '5', unit: 'mm' },
        },
      ],
      note: 'The old set. Out with it.',
    },
  );
}

/** The second circuit car: same wheels as the first, so that sets go from one to the other. */
export function secondCircuitCar(day: string): SeedCar {
  const sheet = openCarSheet({
    day,
    key: 'second',
    carNumber: 7,
    car: {
      name: 'Ardvane Corrit',
      unit: 'km',
      odoDigits: 6,
      profile: {
        sump: 'dry',
        induction: 'natural',
        drive: 'combustion',
        fuel: 'petrol',
        octane: 98,
        gearbox: 'six-speed transaxle',
        wheelFixing: 'centreLock',
        discMaterial: 'iron',
        noiseDb: 95,
        oilSpanL: 1.2,
        oilCapacityL: 8,
        dipstick: { state: 'hotIdle' },
        oilGrade: '10W-50',
      },
    },
    meters: [METER],
  });
  writeCircuitDays(sheet);
  writeWork(sheet);
  const { log, random } = sheet;
  const oil = watchOil(log, {
    random,
    spanL: 1.2,
    useLPer1000Km: 0.4,
    step: 0.25,
    unit: 'l',
    everyDays: [8, 14],
    product: 'Siltane 10W-50',
    condition: { state: 'hotIdle' },
    notes: ['Hot, idling, on the level.'],
  });
  oil.regularly(-718, -620, onCircuit);
  oil.regularly(-440, -300, onCircuit);
  oil.regularly(-120, -3, onCircuit);
  for (const day of [-620, -300, -50]) oil.changed(day, '10:00');
  oil.write();
  writeFuelStops(log, {
    random,
    from: -718,
    to: -4,
    everyDays: [20, 34],
    volume: [36, 58],
    unit: 'l',
    octane: 98,
    skip: onCircuit,
  });
  writeNotes(log, NOTES);
  log.record(
    { day: -1, time: '10:00', number: 9060 },
    { kind: 'odometer', odometer: log.odometer(-1, '10:00') },
  );
  return sheet.finish(items(sheet));
}
