import type { ItemDraft } from '@quartermark/engine/log';
import type { Anchor } from '../car-log.ts';
import { type CarSheet, openCarSheet, writeNotes } from '../car-sheet.ts';
import { CLUB } from '../club.ts';
import { writeFuelStops } from '../fuel-stops.ts';
import { watchOil } from '../oil-watch.ts';
import type { SeedCar } from '../seed-garage.ts';

const METER: readonly Anchor[] = [
  [-730, '10:00', 44_900],
  [-690, '10:00', 45_500],
  [-690, '18:00', 45_600],
  [-600, '12:00', 46_900],
  [-470, '10:00', 46_900],
  [-445, '10:00', 47_500],
  [-445, '18:00', 47_580],
  [-420, '10:00', 48_200],
  [-395, '10:00', 48_480],
  [-395, '18:00', 48_550],
  [-300, '10:00', 49_600],
  [-270, '10:00', 49_790],
  [-270, '18:00', 49_850],
  [-230, '15:00', 50_050],
];

const NOTES = [
  [-640, 'Left kingpin takes grease now. It did not last year.'],
  [-560, 'In store. Turned the engine two turns by hand, plugs out, brake pedal firm.'],
  [-419, 'Points gap by feeler, timing by lamp. Starts on the second turn.'],
  [-350, 'Charging lamp glows at idle. Brush worn to the mark. New pair fitted.'],
  [-229, 'Waiting for the radiator to come back from the repairer. Nothing moves until then.'],
  [-110, 'In store. Cover lifted, no mice, tyres at 3 bar for standing.'],
] as const satisfies readonly (readonly [number, string])[];

const items = ({ on }: CarSheet): ItemDraft[] => [
  {
    name: 'Engine oil',
    role: 'engineOil',
    limits: [
      { measure: 'km', value: 5000, unit: 'km' },
      { measure: 'months', value: 12 },
    ],
    source: "owner's own value",
  },
  {
    name: 'Oil filter',
    role: 'oilFilter',
    limits: [{ measure: 'km', value: 10_000, unit: 'km' }],
    source: "owner's own value",
  },
  {
    name: 'Brake fluid, flush',
    limits: [{ measure: 'months', value: 24 }],
    source: "owner's own value",
  },
  {
    name: 'Coolant',
    limits: [{ measure: 'months', value: 36 }],
    baseline: { on: on(-1090) },
    source: "maker's manual of this invented car",
  },
  {
    name: 'Ignition points',
    limits: [
      { measure: 'km', value: 8000, unit: 'km' },
      { measure: 'months', value: 24 },
    ],
    source: "maker's manual of this invented car",
  },
  {
    name: 'Grease points',
    limits: [
      { measure: 'km', value: 1500, unit: 'km' },
      { measure: 'months', value: 12 },
    ],
    source: "maker's manual of this invented car",
  },
  {
    name: 'Battery',
    limits: [{ measure: 'months', value: 48 }],
    baseline: { on: on(-800) },
    source: "owner's own value",
  },
  {
    name: 'Fuel hoses',
    limits: [{ measure: 'months', value: 60 }],
    source: "owner's own value",
  },
  {
    name: 'Road inspection',
    limits: [{ measure: 'date', value: on(300) }],
    baseline: { on: on(-430) },
    source: 'paper from the inspection',
  },
];

function writeOil(sheet: CarSheet): void {
  const { log, random } = sheet;
  const oil = watchOil(log, {
    random,
    spanL: 1.2,
    useLPer1000Km: 0.5,
    step: 0.25,
    unit: 'l',
    everyDays: [14, 24],
    product: 'Siltane 20W-50',
    condition: { state: 'cold' },
    notes: ['Drips as much as it burns.'],
  });
  oil.regularly(-726, -606);
  oil.regularly(-460, -240);
  for (const [day, number] of [[-700], [-420, 9001]] as const) {
    oil.changed(day, '10:00');
    log.record(
      { day, time: '10:00', number },
      {
        kind: 'oilChange',
        filled: { text: '5.5', unit: 'l' },
        filterRenewed: true,
        product: 'Siltane 20W-50',
        grade: '20W-50',
        odometer: log.odometer(day, '10:00'),
        note: 'Drained warm, filled slowly, oil pressure up in four seconds.',
      },
    );
  }
  oil.write();
  const stops = { random, everyDays: [24, 40], volume: [31, 48], unit: 'l' } as const;
  writeFuelStops(log, { ...stops, from: -722, to: -606 });
  writeFuelStops(log, { ...stops, from: -462, to: -240 });
}

function writeStorage({ log }: CarSheet): void {
  log.record(
    { day: -598, time: '16:00' },
    {
      kind: 'layUp',
      lines: [
        { what: 'Battery', how: 'disconnected' },
        { what: 'Carburettor intakes', how: 'plugged' },
        { what: 'Body', how: 'covered' },
      ],
      keysAt: 'key board, hook 1',
    },
  );
  log.record(
    { day: -470, time: '10:00' },
    {
      kind: 'wakeUp',
      odometer: log.odometer(-470, '10:00'),
      note: 'Rags out of the intakes first. Doors open, then started.',
    },
  );
  log.record(
    { day: -230, time: '15:00', number: 9060 },
    { kind: 'odometer', odometer: log.odometer(-230, '15:00') },
  );
  log.record(
    { day: -230, time: '15:20', number: 9061 },
    {
      kind: 'oilCheck',
      level: { how: 'fraction', fraction: 1, step: 0.25 },
      condition: { state: 'cold' },
    },
  );
  log.record(
    { day: -230, time: '16:00', number: 9005 },
    {
      kind: 'layUp',
      lines: [
        { what: 'Radiator and both coolant hoses', how: 'drained' },
        { what: 'Battery', how: 'disconnected' },
        { what: 'Exhaust', how: 'plugged' },
        { what: 'Body', how: 'covered' },
      ],
      keysAt: 'key board, hook 1, red tag',
      note: 'No coolant in it. Red tag on the wheel says so.',
    },
  );
}

function writeTheRest({ log, item, service }: CarSheet): void {
  log.record(
    { day: -500, time: '14:00', number: 9004 },
    { kind: 'service', items: [item(3)], note: 'Brake fluid while it stands. Clear at all four.' },
  );
  log.record(
    { day: -420, time: '11:00', number: 9002 },
    { kind: 'service', items: [item(5)], note: 'Points and condenser, gap by feeler.' },
  );
  service(-640, '10:00', [6], 'Greased all round, eleven points.');
  service(-300, '10:00', [6], 'Greased all round, wiped off what came out.', 9003);
  for (const [day, km] of [
    [-690, 90],
    [-445, 70],
    [-395, 60],
    [-270, 55],
  ] as const)
    log.record(
      { day, time: '13:00' },
      {
        kind: 'drive',
        use: 'road',
        distance: { text: String(km), unit: 'km' },
        driver: CLUB.drivers[2],
        note: 'Sunday round by the lakes.',
      },
    );
}

/** A classic that stands in store, drained, with a red tag on the wheel. */
export function laidUpClassic(day: string): SeedCar {
  const sheet = openCarSheet({
    day,
    key: 'classic',
    carNumber: 5,
    car: {
      name: 'Ondrey Salvane',
      unit: 'km',
      odoDigits: 5,
      profile: {
        sump: 'wet',
        induction: 'natural',
        drive: 'combustion',
        fuel: 'petrol',
        gearbox: 'four-speed manual',
        wheelFixing: 'stud',
        oilSpanL: 1.2,
        oilCapacityL: 5.5,
        dipstick: { state: 'cold' },
        oilGrade: '20W-50',
      },
    },
    meters: [METER],
  });
  writeOil(sheet);
  writeStorage(sheet);
  writeTheRest(sheet);
  writeNotes(sheet.log, NOTES);
  return sheet.finish(items(sheet));
}
