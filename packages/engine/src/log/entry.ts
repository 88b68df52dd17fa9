import { z } from 'zod';
import {
  civilDate,
  commonFields,
  incidentSort,
  recordedFields,
  recordId,
  shortText,
} from './common.ts';
import {
  depth,
  distance,
  hourReading,
  isPourable,
  odometerReading,
  oilVolume,
  POURED_MAX_L,
  POURED_MIN_L,
  pressure,
  readNumber,
  temperature,
  torque,
  volume,
  volumeL,
} from './quantity.ts';
import { stickLevel } from './stick.ts';

export const readingCondition = z.strictObject({
  state: z.enum(['hotIdle', 'hotStopped', 'cold']),
  minutesAfterStop: z.number().min(0).max(1440).optional(),
  oilTempC: z.number().min(-60).max(250).optional(),
});

const count = (name: string, max: number) =>
  z.number().min(0, `${name}: must not be negative`).max(max, `${name}: at most ${max}`);

const product = {
  product: shortText.optional(),
  grade: shortText.optional(),
  approval: shortText.optional(),
};

const corner = z.enum(['frontLeft', 'frontRight', 'rearLeft', 'rearRight']);

const odometer = z.strictObject({
  kind: z.literal('odometer'),
  ...commonFields,
  odometer: odometerReading,
  hourMeter: hourReading.optional(),
});

const fuel = z.strictObject({
  kind: z.literal('fuel'),
  ...commonFields,
  volume,
  octane: z.number().min(60).max(130).optional(),
  price: shortText.optional(),
  full: z.boolean().optional(),
});

const oilCheck = z.strictObject({
  kind: z.literal('oilCheck'),
  ...commonFields,
  level: stickLevel,
  condition: readingCondition.optional(),
});

const pouredVolume = oilVolume.superRefine((typed, ctx) => {
  // said already, by the quantity itself
  if ('problem' in readNumber(typed.text, false)) return;
  const litres = volumeL(typed);
  if (!isPourable(litres))
    ctx.addIssue({
      code: 'custom',
      path: ['text'],
      message: `oil added: ${typed.text} ${typed.unit} is outside ${POURED_MIN_L} to ${POURED_MAX_L} litres; check the number and its unit`,
    });
});

const oilTopUp = z.strictObject({
  kind: z.literal('oilTopUp'),
  ...commonFields,
  volume: pouredVolume.optional(),
  toMax: z.boolean().optional(),
  levelBefore: stickLevel.optional(),
  levelAfter: stickLevel.optional(),
  condition: readingCondition.optional(),
  ...product,
});

const oilChange = z.strictObject({
  kind: z.literal('oilChange'),
  ...commonFields,
  filled: oilVolume.optional(),
  drained: oilVolume.optional(),
  filterRenewed: z.boolean(),
  levelAfter: stickLevel.optional(),
  condition: readingCondition.optional(),
  ...product,
});

const fluid = z.strictObject({
  kind: z.literal('fluid'),
  ...commonFields,
  which: shortText,
  levelText: shortText.optional(),
  added: volume.optional(),
});

const drive = z
  .strictObject({
    kind: z.literal('drive'),
    ...commonFields,
    use: z.enum(['road', 'touring']),
    distance: distance.optional(),
    /** last day of a road trip */
    until: civilDate.optional(),
  })
  .refine(({ on, until }) => until === undefined || until >= on, {
    path: ['until'],
    error: 'until: the last day is before the first; swap them or leave it empty',
  });

const session = z.strictObject({
  kind: z.literal('session'),
  ...commonFields,
  use: z.enum(['circuit', 'autocross']),
  sessions: count('sessions', 100).default(1),
  distance: distance.optional(),
  hours: count('hours', 24).optional(),
  laps: count('laps', 2000).optional(),
  venue: shortText.optional(),
  oilTempPeak: temperature.optional(),
  coolantTempPeak: temperature.optional(),
  tyreSet: recordId.optional(),
  pressuresCold: z.partialRecord(corner, pressure).optional(),
  pressuresHot: z.partialRecord(corner, pressure).optional(),
  fuelUsed: volume.optional(),
  remarks: shortText.optional(),
  event: recordId.optional(),
  plannedOn: civilDate.optional(),
});

const pass = z.strictObject({
  lane: z.enum(['left', 'right']).optional(),
  reactionS: count('reaction time', 60).optional(),
  at60ftS: count('60 ft time', 60).optional(),
  at8thS: count('1/8 mile time', 120).optional(),
  at8thKmh: count('1/8 mile speed', 700).optional(),
  at4thS: count('1/4 mile time', 120).optional(),
  at4thKmh: count('1/4 mile speed', 700).optional(),
  dialInS: count('dial-in', 120).optional(),
  pressure: pressure.optional(),
});

const strip = z.strictObject({
  kind: z.literal('strip'),
  ...commonFields,
  passes: z.array(pass).min(1, 'passes: at least one').max(100),
  /** starts under full power; as many as passes unless said otherwise */
  launches: count('launches', 200).optional(),
  weather: shortText.optional(),
  venue: shortText.optional(),
  plannedOn: civilDate.optional(),
});

const service = z.strictObject({
  kind: z.literal('service'),
  ...commonFields,
  items: z.array(recordId).min(1, 'items: name at least one item that was done').max(50),
  parts: z.array(shortText).max(100).optional(),
  fasteners: z.array(shortText).max(100).optional(),
  cost: shortText.optional(),
  job: recordId.optional(),
  byWhom: shortText.optional(),
  hourMeter: hourReading.optional(),
  /** true: everything since this service is in the log, though it lies before the first reading */
  historyComplete: z.boolean().optional(),
});

const inspection = z.strictObject({
  kind: z.literal('inspection'),
  ...commonFields,
  byWhom: shortText.optional(),
  purpose: shortText,
  result: z.enum(['passed', 'conditional', 'failed']),
  sticker: shortText.optional(),
  noiseDb: count('noise', 200).optional(),
  validTo: civilDate.optional(),
});

const treadReading = z.strictObject({ corner, groove: shortText.optional(), depth });
const padReading = z.strictObject({ corner, inner: depth.optional(), outer: depth.optional() });
const discReading = z.strictObject({
  corner,
  thickness: depth.optional(),
  /** carbon-ceramic discs are weighed */
  massG: count('disc mass', 50_000).optional(),
});

const measure = z.strictObject({
  kind: z.literal('measure'),
  ...commonFields,
  component: recordId.optional(),
  tread: z.array(treadReading).max(40).optional(),
  dateCode: shortText.optional(),
  pads: z.array(padReading).max(8).optional(),
  discs: z.array(discReading).max(8).optional(),
  cracks: shortText.optional(),
  batteryV: count('battery', 1000).optional(),
  brakeFluidTest: shortText.optional(),
  oilPressureHotIdle: pressure.optional(),
  oilPressureAtRpm: z.strictObject({ pressure, rpm: count('rpm', 30_000) }).optional(),
  pressures: z.partialRecord(corner, pressure).optional(),
});

const fit = z.strictObject({
  kind: z.literal('fit'),
  ...commonFields,
  component: recordId,
  change: z.enum(['on', 'off', 'moved']),
  positions: z.array(shortText).max(8).optional(),
  condition: z.enum(['new', 'used']).optional(),
  bedding: z.enum(['bedded', 'firstSession', 'notBedded']).optional(),
});

const wheels = z.strictObject({
  kind: z.literal('wheels'),
  ...commonFields,
  change: z.enum(['off', 'torqued', 'rechecked']),
  which: z.array(corner).max(4).optional(),
  torque: torque.optional(),
  cold: z.boolean().optional(),
});

const finding = z.strictObject({
  kind: z.literal('finding'),
  ...commonFields,
  what: shortText,
  where: corner.or(shortText).optional(),
  severity: z.enum(['doNotDrive', 'beforeHardUse', 'watch', 'cosmetic']),
  dueBy: civilDate.optional(),
  resolvedBy: recordId.optional(),
});

const incident = z.strictObject({
  kind: z.literal('incident'),
  ...commonFields,
  what: incidentSort,
  detail: shortText.optional(),
});

const storageLines = z
  .array(
    z.strictObject({
      what: shortText,
      how: z.enum(['disconnected', 'plugged', 'drained', 'blownUp', 'covered', 'other']),
    }),
  )
  .max(60);

const layUp = z.strictObject({
  kind: z.literal('layUp'),
  ...commonFields,
  lines: storageLines.optional(),
  keysAt: shortText.optional(),
  /** planned end, both ends inclusive */
  until: civilDate.optional(),
});

const wakeUp = z.strictObject({
  kind: z.literal('wakeUp'),
  ...commonFields,
  lines: storageLines.optional(),
});

const meterReplaced = z
  .strictObject({
    kind: z.literal('meterReplaced'),
    ...commonFields,
    meter: z.enum(['odometer', 'hours']),
    oldLast: odometerReading.or(hourReading).optional(),
    newFirst: odometerReading.or(hourReading),
  })
  .superRefine(({ meter, oldLast, newFirst }, ctx) => {
    const wrong = (unit: string) => (meter === 'hours') !== (unit === 'h');
    for (const [field, typed] of Object.entries({ oldLast, newFirst }))
      if (typed && wrong(typed.unit))
        ctx.addIssue({
          code: 'custom',
          path: [field, 'unit'],
          message: `${field}: the unit must be ${meter === 'hours' ? 'h' : 'km or mi'}`,
        });
  });

const repair = z.strictObject({
  kind: z.literal('repair'),
  ...commonFields,
  text: shortText,
  affectsOilUse: z.boolean().optional(),
});

const labReport = z.strictObject({
  kind: z.literal('labReport'),
  ...commonFields,
  laboratory: shortText.optional(),
  figures: z.record(shortText, z.number()).optional(),
});

const handover = z.strictObject({
  kind: z.literal('handover'),
  ...commonFields,
  what: z.enum(['bought', 'sold', 'lent', 'returned']),
  who: shortText.optional(),
});

const answer = z.strictObject({
  kind: z.literal('answer'),
  ...commonFields,
  /** id of the finding, the incident or the notice that is answered */
  notice: shortText,
  answer: shortText,
  /** lines of the inspection list that were looked at */
  checked: z.array(shortText).max(60).optional(),
});

const noteEntry = z.strictObject({
  kind: z.literal('note'),
  ...commonFields,
  note: commonFields.note.unwrap().min(1, 'note: write something, or discard it'),
});

const kinds = [
  odometer,
  fuel,
  oilCheck,
  oilTopUp,
  oilChange,
  fluid,
  drive,
  session,
  strip,
  service,
  inspection,
  measure,
  fit,
  wheels,
  finding,
  incident,
  layUp,
  wakeUp,
  meterReplaced,
  repair,
  labReport,
  handover,
  answer,
  noteEntry,
] as const;

/** An entry as a form, an import or a queue sends it: everything but what the server adds. */
export const entryInput = z.discriminatedUnion('kind', kinds);
export type EntryInput = z.infer<typeof entryInput>;

/** What a caller may write down: defaults (one session) need not be typed. */
export type EntryDraft = z.input<typeof entryInput>;

export type EntryKind = EntryInput['kind'];
export const ENTRY_KINDS = kinds.map((kind) => kind.shape.kind.value) as readonly EntryKind[];

/** An entry of the log: the input and what the server added. */
export type Entry = EntryInput & { recorded: number; revision: number; removed: boolean };

/** Reads one entry of a `log/1` file: the server's fields beside the kind's own. */
export const entry: z.ZodType<Entry> = z
  .looseObject(recordedFields)
  .transform(({ recorded, revision, removed, ...rest }, ctx) => {
    const parsed = entryInput.safeParse(rest);
    if (parsed.success) return { ...parsed.data, recorded, revision, removed };
    for (const issue of parsed.error.issues)
      ctx.addIssue({ code: 'custom', path: [...issue.path], message: issue.message });
    return z.NEVER;
  });

export type StickLevel = z.infer<typeof stickLevel>;
export type ReadingCondition = z.infer<typeof readingCondition>;
export type EntryOf<K extends EntryKind> = Extract<EntryInput, { kind: K }>;
