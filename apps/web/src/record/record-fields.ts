import type { LastValues } from '@quartermark/api/client';
import type { EntryInput, EntryOf, ReadingCondition } from '@quartermark/engine/log';
import { type ZoneField, zoneOf } from './zones.ts';

/** As typed; the schema judges both when the entry is read. */
export type TypedText = { text: string; unit: string };

export type ConditionFields = { state: ReadingCondition['state'] | ''; minutes: string };
export type ProductFields = { product: string; grade: string; approval: string };
export type PassFields = {
  lane: '' | 'left' | 'right';
  reactionS: string;
  at60ftS: string;
  at8thS: string;
  at8thKmh: string;
  at4thS: string;
  at4thKmh: string;
  dialInS: string;
};

/** What a form holds: everything as typed. Only the part of the kind that is written is read. */
export type RecordFields = {
  /** made once, so that sending again after no answer cannot write it twice */
  entryId: string;
  /** revision the fields were taken from; 0 for a new entry */
  baseRevision: number;
  on: string;
  time: string;
  dayOrder: '' | 'beforeDriving' | 'afterDriving';
  odometer: TypedText;
  driver: string;
  note: string;
  reading: { hourMeter: string };
  fuel: { volume: TypedText; full: boolean; octane: string; price: string };
  oilCheck: { level: ZoneField; condition: ConditionFields };
  oilTopUp: ProductFields & {
    volume: TypedText;
    toMax: boolean;
    before: ZoneField;
    after: ZoneField;
  };
  oilChange: ProductFields & {
    filled: TypedText;
    drained: TypedText;
    filter: '' | 'renewed' | 'kept';
    after: ZoneField;
  };
  drive: { use: 'road' | 'touring'; distance: TypedText; until: string };
  session: {
    use: 'circuit' | 'autocross';
    sessions: number | null;
    distance: TypedText;
    hours: string;
    laps: string;
    venue: string;
    oilTempPeak: TypedText;
    coolantTempPeak: TypedText;
    remarks: string;
  };
  strip: {
    passes: number | null;
    launches: string;
    venue: string;
    weather: string;
    details: PassFields[];
  };
  service: {
    items: string[];
    parts: string;
    byWhom: string;
    cost: string;
    hourMeter: string;
    historyComplete: boolean;
  };
};

/** What the fields of a car's forms start from. */
export type Start = {
  entryId: string;
  today: string;
  /** of the car's odometer */
  unit: 'km' | 'mi';
  /** of the garage */
  volumeUnit: 'l' | 'usQt' | 'impQt';
  last: LastValues | null;
};

const FUEL_UNIT = { l: 'l', usQt: 'usGal', impQt: 'impGal' } as const;
const NO_PRODUCT: ProductFields = { product: '', grade: '', approval: '' };
export const NO_PASS: PassFields = {
  lane: '',
  reactionS: '',
  at60ftS: '',
  at8thS: '',
  at8thKmh: '',
  at4thS: '',
  at4thKmh: '',
  dialInS: '',
};

/** The fields of a new entry: today, the units last used, everything else not said. */
export function emptyFields({ entryId, today, unit, volumeUnit, last }: Start): RecordFields {
  const fuel = last?.fuel?.kind === 'fuel' ? last.fuel : null;
  const topUp = last?.oilTopUp?.kind === 'oilTopUp' ? last.oilTopUp : null;
  const session = last?.session?.kind === 'session' ? last.session : null;
  const distance = { text: '', unit };
  const oil = { text: '', unit: topUp?.volume?.unit ?? volumeUnit };
  const temperature = { text: '', unit: session?.oilTempPeak?.unit ?? 'c' };
  return {
    entryId,
    baseRevision: 0,
    on: today,
    time: '',
    dayOrder: '',
    odometer: { text: '', unit: last?.odometer?.unit ?? unit },
    driver: '',
    note: '',
    reading: { hourMeter: '' },
    fuel: {
      volume: { text: '', unit: fuel?.volume.unit ?? FUEL_UNIT[volumeUnit] },
      full: false,
      octane: '',
      price: '',
    },
    oilCheck: { level: '', condition: { state: '', minutes: '' } },
    oilTopUp: { volume: oil, toMax: false, before: '', after: '', ...NO_PRODUCT },
    oilChange: { filled: oil, drained: oil, filter: '', after: '', ...NO_PRODUCT },
    drive: { use: 'road', distance, until: '' },
    session: {
      use: session?.use ?? 'circuit',
      sessions: 1,
      distance,
      hours: '',
      laps: '',
      venue: '',
      oilTempPeak: temperature,
      coolantTempPeak: temperature,
      remarks: '',
    },
    strip: { passes: 1, launches: '', venue: '', weather: '', details: [] },
    service: {
      items: [],
      parts: '',
      byWhom: '',
      cost: '',
      hourMeter: '',
      historyComplete: false,
    },
  };
}

/** A stored entry as its form shows it, letter for letter. */
export function fieldsOf(entry: EntryInput, revision: number, start: Start): RecordFields {
  const empty = emptyFields(start);
  return {
    ...empty,
    entryId: entry.id,
    baseRevision: revision,
    on: entry.on,
    time: entry.time ?? '',
    dayOrder: entry.dayOrder ?? '',
    odometer: entry.odometer ?? empty.odometer,
    driver: entry.driver ?? '',
    note: entry.note ?? '',
    ...ownFields(entry, empty),
  };
}

/** The part of the entry's own kind; of a kind without a form nothing. */
export function ownFields(entry: EntryInput, empty: RecordFields): Partial<RecordFields> {
  switch (entry.kind) {
    case 'odometer':
      return { reading: { hourMeter: entry.hourMeter?.text ?? '' } };
    case 'fuel':
      return { fuel: fuelFields(entry) };
    case 'oilCheck':
      return { oilCheck: { level: zoneOf(entry.level), condition: condition(entry.condition) } };
    case 'oilTopUp':
      return { oilTopUp: topUpFields(entry, empty) };
    case 'oilChange':
      return { oilChange: oilChangeFields(entry, empty) };
    case 'drive':
      return {
        drive: {
          use: entry.use,
          distance: entry.distance ?? empty.drive.distance,
          until: entry.until ?? '',
        },
      };
    case 'session':
      return { session: sessionFields(entry, empty) };
    case 'strip':
      return { strip: stripFields(entry) };
    case 'service':
      return { service: serviceFields(entry) };
    case 'note':
    case 'fluid':
    case 'inspection':
    case 'measure':
    case 'fit':
    case 'wheels':
    case 'finding':
    case 'incident':
    case 'layUp':
    case 'wakeUp':
    case 'meterReplaced':
    case 'repair':
    case 'labReport':
    case 'handover':
    case 'answer':
      return {};
  }
}

const typed = (value: number | undefined) => (value === undefined ? '' : String(value));

function condition(read: ReadingCondition | undefined): ConditionFields {
  return { state: read?.state ?? '', minutes: typed(read?.minutesAfterStop) };
}

function productFields(entry: { product?: string; grade?: string; approval?: string }) {
  return {
    product: entry.product ?? '',
    grade: entry.grade ?? '',
    approval: entry.approval ?? '',
  };
}

function fuelFields(entry: EntryOf<'fuel'>): RecordFields['fuel'] {
  const { volume, full, octane, price } = entry;
  return { volume, full: full ?? false, octane: typed(octane), price: price ?? '' };
}

function topUpFields(entry: EntryOf<'oilTopUp'>, empty: RecordFields): RecordFields['oilTopUp'] {
  return {
    volume: entry.volume ?? empty.oilTopUp.volume,
    toMax: entry.toMax ?? false,
    before: zoneOf(entry.levelBefore),
    after: zoneOf(entry.levelAfter),
    ...productFields(entry),
  };
}

function oilChangeFields(entry: EntryOf<'oilChange'>, empty: RecordFields) {
  return {
    filled: entry.filled ?? empty.oilChange.filled,
    drained: entry.drained ?? empty.oilChange.drained,
    filter: entry.filterRenewed ? ('renewed' as const) : ('kept' as const),
    after: zoneOf(entry.levelAfter),
    ...productFields(entry),
  };
}

function sessionFields(entry: EntryOf<'session'>, empty: RecordFields): RecordFields['session'] {
  return {
    use: entry.use,
    sessions: entry.sessions,
    distance: entry.distance ?? empty.session.distance,
    hours: typed(entry.hours),
    laps: typed(entry.laps),
    venue: entry.venue ?? '',
    oilTempPeak: entry.oilTempPeak ?? empty.session.oilTempPeak,
    coolantTempPeak: entry.coolantTempPeak ?? empty.session.coolantTempPeak,
    remarks: entry.remarks ?? '',
  };
}

function stripFields(entry: EntryOf<'strip'>): RecordFields['strip'] {
  return {
    passes: entry.passes.length,
    launches: typed(entry.launches),
    venue: entry.venue ?? '',
    weather: entry.weather ?? '',
    details: entry.passes.map((pass) => ({
      lane: pass.lane ?? '',
      reactionS: typed(pass.reactionS),
      at60ftS: typed(pass.at60ftS),
      at8thS: typed(pass.at8thS),
      at8thKmh: typed(pass.at8thKmh),
      at4thS: typed(pass.at4thS),
      at4thKmh: typed(pass.at4thKmh),
      dialInS: typed(pass.dialInS),
    })),
  };
}

function serviceFields(entry: EntryOf<'service'>): RecordFields['service'] {
  return {
    items: entry.items,
    parts: (entry.parts ?? []).join('\n'),
    byWhom: entry.byWhom ?? '',
    cost: entry.cost ?? '',
    hourMeter: entry.hourMeter?.text ?? '',
    historyComplete: entry.historyComplete ?? false,
  };
}
