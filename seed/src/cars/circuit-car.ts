import type { ItemDraft } from '@quartermark/engine/log';
import type { Anchor } from '../car-log.ts';
import { type CarSheet, openCarSheet, writeNotes } from '../car-sheet.ts';
import { CLUB } from '../club.ts';
import { writeFuelStops } from '../fuel-stops.ts';
import { watchOil } from '../oil-watch.ts';
import type { SeedCar } from '../seed-garage.ts';
import { writeTrouble } from './circuit-trouble.ts';

/** One circuit day: stints of so many km and hours each, the odometer at 07:00 and at 18:00. */
type CircuitDay = {
  day: number;
  stints: number;
  km: number;
  hours: number;
  before: number;
  after: number;
  /** number of the first stint's record, where it is spoken of elsewhere */
  number?: number;
};

const CIRCUIT_DAYS: readonly CircuitDay[] = [
  { day: -709, stints: 4, km: 24, hours: 0.4, before: 24_310, after: 24_430 },
  { day: -681, stints: 4, km: 24, hours: 0.4, before: 24_690, after: 24_810 },
  { day: -653, stints: 5, km: 25, hours: 0.4, before: 25_080, after: 25_230 },
  { day: -618, stints: 4, km: 26, hours: 0.4, before: 25_560, after: 25_690 },
  { day: -436, stints: 4, km: 24, hours: 0.4, before: 26_410, after: 26_530 },
  { day: -401, stints: 5, km: 24, hours: 0.4, before: 26_900, after: 27_040 },
  { day: -366, stints: 4, km: 28, hours: 0.5, before: 27_450, after: 27_590 },
  { day: -317, stints: 5, km: 24, hours: 0.4, before: 28_260, after: 28_400 },
  { day: -282, stints: 4, km: 25, hours: 0.4, before: 28_900, after: 29_020 },
  { day: -72, stints: 5, km: 25, hours: 0.4, before: 31_180, after: 31_320, number: 9011 },
  { day: -44, stints: 4, km: 25, hours: 0.4, before: 31_560, after: 31_680, number: 9021 },
  { day: -30, stints: 4, km: 30, hours: 0.5, before: 31_830, after: 31_970, number: 9031 },
  { day: -16, stints: 5, km: 24, hours: 0.4, before: 32_150, after: 32_290, number: 9041 },
  { day: -2, stints: 4, km: 25, hours: 0.4, before: 32_400, after: 32_520, number: 9051 },
];

const STINT_TIMES = ['09:00', '10:30', '13:30', '15:00', '16:15'] as const;

const METER: readonly Anchor[] = (
  [
    [-730, '12:00', 24_050],
    ...CIRCUIT_DAYS.flatMap(({ day, before, after }): Anchor[] => [
      [day, '07:00', before],
      [day, '18:00', after],
    ]),
    [-592, '12:00', 25_830],
    [-468, '10:00', 25_830],
    [-200, '12:00', 30_100],
    [-130, '12:00', 30_350],
    [-90, '10:00', 30_980],
    [-58, '10:00', 31_400],
    [-1, '11:00', 32_540],
  ] satisfies Anchor[]
).toSorted((a, b) => a[0] - b[0] || a[1].localeCompare(b[1]));

const REMARKS = [
  'Pressures up 0.4 bar hot, bled back to target.',
  'Second gear reluctant on the way down, fine when warm.',
  'Clean stint, traffic only at the end.',
  'Oil at 118 C on the last two laps, backed off.',
  'Left front wearing the outer shoulder again.',
] as const;

const NOTES = [
  [
    -720,
    'Tank screen out and washed. Two bright flakes, nothing with an edge. Kept them in a jar.',
  ],
  [-600, 'Before the cold: fresh oil goes in at wake-up, not now. Tank stays full, cap taped.'],
  [-440, 'Seat moved one hole back for Tam. Harness straps re-measured, lap belt flat.'],
  [
    -350,
    'Weeping at the scavenge line union, rear. Nipped up a flat, wiped dry, look again next time.',
  ],
  [-340, 'Scavenge union dry after a drive. Leave it alone.'],
  [-210, 'Lift locked on all four posts, undertray off. Stone in the cooler duct, no fin bent.'],
  [-60, 'Read the stick hot at idle, as the book of this car says. Cold it shows half a mark low.'],
  [
    -15,
    'Brake pedal a finger longer at the end of yesterday. Fluid next, before the car goes out again.',
  ],
] as const satisfies readonly (readonly [number, string])[];

const items = ({ on }: CarSheet): ItemDraft[] => [
  {
    name: 'Engine oil',
    role: 'engineOil',
    limits: [
      { measure: 'km', value: 6000, unit: 'km', weights: { circuit: 8 } },
      { measure: 'sessions', value: 30, weights: { road: 0, touring: 0 } },
      { measure: 'months', value: 12 },
    ],
    severe: {
      classes: ['circuit'],
      measure: 'sessions',
      share: 0.5,
      limits: [{ measure: 'months', value: 6 }],
    },
    source: "owner's own value",
  },
  {
    name: 'Oil filter',
    role: 'oilFilter',
    limits: [
      { measure: 'sessions', value: 30, weights: { road: 0, touring: 0 } },
      { measure: 'months', value: 12 },
    ],
    source: "owner's own value",
  },
  {
    name: 'Brake fluid, flush',
    role: 'brakeFluid',
    limits: [
      {
        measure: 'sessions',
        value: 18,
        weights: { road: 0, touring: 0, strip: 0, autocross: 0.3 },
      },
      { measure: 'months', value: 12 },
    ],
    source: "owner's own value",
  },
  {
    name: 'Gearbox oil',
    limits: [
      { measure: 'hours', value: 16, weights: { road: 0, touring: 0 } },
      { measure: 'months', value: 24 },
    ],
    source: "maker's manual of this invented car",
  },
  {
    name: 'Front brake pads',
    role: 'pads',
    limits: [{ measure: 'sessions', value: 14, weights: { road: 0, touring: 0 } }],
    leadDays: 12,
    source: "owner's own value",
  },
  {
    name: 'Dry-sump hoses',
    limits: [{ measure: 'months', value: 60 }],
    baseline: { on: on(-500), historyComplete: true },
    source: "owner's own value",
  },
  {
    name: 'Fire extinguisher, date on the label',
    limits: [{ measure: 'date', value: on(12) }],
    baseline: { on: on(-353) },
    source: 'label on the bottle',
  },
  {
    name: 'Harness, date on the label',
    limits: [{ measure: 'date', value: on(-9) }],
    baseline: { on: on(-700) },
    source: 'label on the shoulder strap',
  },
  {
    name: 'Road inspection',
    limits: [{ measure: 'date', value: on(140) }],
    baseline: { on: on(-590) },
    warnDays: 30,
    source: 'paper from the inspection',
  },
  {
    name: 'Coolant',
    limits: [{ measure: 'months', value: 36 }],
    source: "maker's manual of this invented car",
  },
];

function writeCircuitDay(sheet: CarSheet, circuitDay: CircuitDay): void {
  const { day, stints, km, hours, number } = circuitDay;
  const driver = CLUB.drivers[Math.floor(sheet.random() * 2)];
  for (const [index, time] of STINT_TIMES.slice(0, stints).entries()) {
    sheet.log.record(
      { day, time, number: number === undefined ? undefined : number + index },
      {
        kind: 'session',
        use: 'circuit',
        sessions: 1,
        distance: { text: String(km), unit: 'km' },
        hours,
        laps: Math.round(km / 3),
        venue: CLUB.circuit,
        driver,
        oilTempPeak: { text: String(104 + Math.floor(sheet.random() * 14)), unit: 'c' },
        remarks: REMARKS[Math.floor(sheet.random() * REMARKS.length * 2)],
      },
    );
  }
}

function writeServices({ log, item, service }: CarSheet): void {
  service(-702, '14:00', [3, 5], 'Fluid and front pads before the season. Bedded on the way home.');
  service(-640, '15:00', [4], 'Gearbox oil. Magnet: a grey smear, no chips.');
  service(-455, '11:00', [3], 'Yearly flush. Right rear first, pedal firm.');
  service(-390, '19:00', [5], 'Front pads at 5 mm, not waiting for the next one.');
  service(-295, '10:00', [3, 5], 'Flush and pads together, the wheels were off anyway.');
  service(-72, '07:00', [3], 'Flushed in the paddock before the first stint. Pedal firm.', 9002);
  service(-30, '18:00', [4], 'Gearbox oil while it was hot, after the last stint.', 9003);
  log.record(
    { day: -30, number: 9004, recordedDay: -30 },
    {
      kind: 'service',
      dayOrder: 'afterDriving',
      items: [item(5)],
      parts: ['front pad set, circuit compound'],
      note: 'Front pads in the paddock after the last stint. Wheels torqued cold the next morning.',
    },
  );
}

const OIL_CHANGES = [
  [-700, 9.2, 'First change in our hands. Filter cut open: clean.'],
  [-465, 9.0, 'Wake-up change. Built pressure on the starter before it fired.'],
  [-330, 9.1, 'Mid-season change, ran 2.1 L into the pan from the tank alone.'],
  [-230, 9.0, 'End of season.'],
  [-58, 9.1, 'Before the busy month. Hot idle: stick at MAX.'],
] as const;

/** Circuit days with their looks at the oil, the weekly looks between, changes and top-ups. */
function writeOil(sheet: CarSheet): void {
  const { log, random } = sheet;
  const oil = watchOil(log, {
    random,
    spanL: 1.5,
    useLPer1000Km: 0.6,
    step: 0.25,
    unit: 'l',
    everyDays: [6, 10],
    product: 'Siltane 10W-50',
    condition: { state: 'hotIdle' },
    notes: [
      'Hot, idling, on the level.',
      'Half a bottle left on the shelf.',
      'No smoke, just thirst.',
    ],
  });
  const onCircuit = (day: number) => CIRCUIT_DAYS.some((each) => each.day === day);
  for (const { day, stints } of CIRCUIT_DAYS) {
    oil.look(day, '08:00', false);
    if (stints > 4) oil.look(day, '12:30', false);
    oil.look(day, '18:20');
  }
  oil.regularly(-728, -600, onCircuit);
  oil.regularly(-460, -240, onCircuit);
  oil.regularly(-118, -9, onCircuit);
  for (const [day, litres, note] of OIL_CHANGES) {
    oil.changed(day, '10:00');
    log.record(
      { day, time: '10:00', number: day === -58 ? 9001 : undefined },
      {
        kind: 'oilChange',
        filled: { text: litres.toFixed(1), unit: 'l' },
        filterRenewed: true,
        levelAfter: { how: 'fraction', fraction: 1 },
        condition: { state: 'hotIdle' },
        product: 'Siltane 10W-50',
        grade: '10W-50',
        odometer: log.odometer(day, '10:00'),
        note,
      },
    );
  }
  oil.write();
  writeFuelStops(log, {
    random,
    from: -725,
    to: -4,
    everyDays: [13, 22],
    volume: [38, 62],
    unit: 'l',
    octane: 98,
    skip: (day) => onCircuit(day) || (day > -600 && day < -466),
    uses: { per100Km: 11.5, per100HardKm: 33, hardKm: circuitKm, tankL: 70 },
  });
}

/** Kilometres on circuits after one day and up to another. */
function circuitKm(after: number, until: number): number {
  const between = CIRCUIT_DAYS.filter(({ day }) => day > after && day <= until);
  return between.reduce((sum, { stints, km }) => sum + stints * km, 0);
}

function writeLastDay({ log }: CarSheet): void {
  log.record(
    { day: -1, time: '11:00', number: 9060 },
    { kind: 'odometer', odometer: log.odometer(-1, '11:00') },
  );
  log.record(
    { day: -1, time: '11:10', number: 9061 },
    {
      kind: 'oilCheck',
      level: { how: 'fraction', fraction: 0.75, step: 0.25 },
      condition: { state: 'hotIdle' },
      note: 'After yesterday: three quarters, hot idle, level floor.',
    },
  );
}

function writeWinter({ log }: CarSheet): void {
  log.record(
    { day: -592, time: '15:00' },
    {
      kind: 'layUp',
      lines: [
        { what: 'Battery', how: 'disconnected' },
        { what: 'Exhaust tips', how: 'plugged' },
        { what: 'Body', how: 'covered' },
      ],
      keysAt: 'key board, hook 4',
    },
  );
  log.record(
    { day: -468, time: '10:00' },
    {
      kind: 'wakeUp',
      lines: [
        { what: 'Exhaust tips', how: 'plugged' },
        { what: 'Battery', how: 'disconnected' },
        { what: 'Body', how: 'covered' },
      ],
      odometer: log.odometer(-468, '10:00'),
      note: 'Plugs out of the exhaust, doors open, then the battery.',
    },
  );
}

/** A dry-sump circuit car, driven to the circuit on the road, read after each day. */
export function circuitCar(day: string): SeedCar {
  const sheet = openCarSheet({
    day,
    key: 'circuit',
    carNumber: 1,
    car: {
      name: 'Ardvane Thessel',
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
        noiseDb: 98,
        liftPoints: 'four pads inboard of the sills',
        oilSpanL: 1.5,
        oilCapacityL: 9.5,
        dipstick: { state: 'hotIdle' },
        oilGrade: '10W-50',
      },
    },
    meters: [METER],
  });
  for (const circuitDay of CIRCUIT_DAYS) writeCircuitDay(sheet, circuitDay);
  writeServices(sheet);
  writeOil(sheet);
  writeWinter(sheet);
  writeTrouble(sheet);
  writeNotes(sheet.log, NOTES);
  writeLastDay(sheet);
  return sheet.finish(items(sheet));
}
