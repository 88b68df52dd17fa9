import { type EntryInput, type EntryOf, readNumber } from '@quartermark/engine/log';
import type { ConditionFields, PassFields, RecordFields, TypedText } from './record-fields.ts';
import { NO_PASS } from './record-fields.ts';
import type { FormKind } from './record-kinds.ts';
import { levelOf } from './zones.ts';

/** What is wrong, by the path of the field in the entry. */
export type Problems = Record<string, string>;

/** Members of an entry as they are to be written; undefined takes one away. */
export type Members = Record<string, unknown>;

/** Empty is left out. */
export const text = (typed: string) => (typed.trim() === '' ? undefined : typed.trim());
export const quantity = (typed: TypedText) => (typed.text.trim() === '' ? undefined : typed);
const yes = (ticked: boolean) => (ticked ? true : undefined);

function number(typed: string, path: string, problems: Problems): number | undefined {
  if (typed.trim() === '') return undefined;
  const read = readNumber(typed, false);
  if ('value' in read) return read.value;
  problems[path] = read.problem;
  return undefined;
}

type Was<K extends EntryInput['kind']> = EntryOf<K> | undefined;

/** The entry before it is amended, if it is one of that kind. */
function was<K extends EntryInput['kind']>(kind: K, base: EntryInput | null): Was<K> {
  // the discriminant was just compared
  return base?.kind === kind ? (base as EntryOf<K>) : undefined;
}

type Read = (fields: RecordFields, base: EntryInput | null, problems: Problems) => Members;

function readCondition(
  { state, minutes }: ConditionFields,
  base: Was<'oilCheck'>,
  problems: Problems,
) {
  if (state === '') return undefined;
  const stopped = state === 'hotStopped' ? minutes : '';
  const minutesAfterStop = number(stopped, 'condition.minutesAfterStop', problems);
  return { ...base?.condition, state, minutesAfterStop };
}

const readOilCheck: Read = ({ oilCheck }, base, problems) => {
  const before = was('oilCheck', base);
  const level = levelOf(oilCheck.level, before?.level);
  if (!level) problems.level = 'Choose the mark where the oil stands.';
  return { level, condition: readCondition(oilCheck.condition, before, problems) };
};

const product = (fields: { product: string; grade: string; approval: string }) => ({
  product: text(fields.product),
  grade: text(fields.grade),
  approval: text(fields.approval),
});

const readOilTopUp: Read = ({ oilTopUp: fields }, base, problems) => {
  const before = was('oilTopUp', base);
  const volume = quantity(fields.volume);
  const toMax = yes(fields.toMax);
  if (!volume && !toMax)
    problems['volume.text'] =
      'Choose a bottle, write the amount, or say that it was filled to MAX.';
  return {
    volume,
    toMax,
    levelBefore: levelOf(fields.before, before?.levelBefore),
    levelAfter: levelOf(fields.after, before?.levelAfter),
    ...product(fields),
  };
};

const readOilChange: Read = ({ oilChange: fields }, base, problems) => {
  if (fields.filter === '')
    problems.filterRenewed = 'Say whether the filter was renewed: its own count goes by that.';
  return {
    filled: quantity(fields.filled),
    drained: quantity(fields.drained),
    filterRenewed: fields.filter === 'renewed',
    levelAfter: levelOf(fields.after, was('oilChange', base)?.levelAfter),
    ...product(fields),
  };
};

const readFuel: Read = ({ fuel }, _base, problems) => {
  if (!quantity(fuel.volume)) problems['volume.text'] = 'Write how much went in, such as 41.20.';
  return {
    volume: fuel.volume,
    full: yes(fuel.full),
    octane: number(fuel.octane, 'octane', problems),
    price: text(fuel.price),
  };
};

const readOdometer: Read = ({ odometer, reading }, _base, problems) => {
  if (!quantity(odometer)) problems['odometer.text'] = 'Write what the odometer shows.';
  return { hourMeter: quantity({ text: reading.hourMeter, unit: 'h' }) };
};

const readDrive: Read = ({ drive }) => ({
  use: drive.use,
  distance: quantity(drive.distance),
  until: drive.use === 'touring' ? text(drive.until) : undefined,
});

const readSession: Read = ({ session }, _base, problems) => {
  if (session.sessions === null || session.sessions <= 0)
    problems.sessions = 'Say how many sessions; one or more.';
  return {
    use: session.use,
    sessions: session.sessions ?? undefined,
    distance: quantity(session.distance),
    hours: number(session.hours, 'hours', problems),
    laps: number(session.laps, 'laps', problems),
    venue: text(session.venue),
    oilTempPeak: quantity(session.oilTempPeak),
    coolantTempPeak: quantity(session.coolantTempPeak),
    remarks: text(session.remarks),
  };
};

const TIMES = [
  'reactionS',
  'at60ftS',
  'at8thS',
  'at8thKmh',
  'at4thS',
  'at4thKmh',
  'dialInS',
] as const satisfies readonly (keyof PassFields)[];

function readPass(fields: PassFields, path: string, problems: Problems): Members {
  const figures = TIMES.map((name) => [name, number(fields[name], `${path}.${name}`, problems)]);
  return { lane: text(fields.lane), ...Object.fromEntries(figures) };
}

/** The most that the schema lets a day have; more is refused before so many are made. */
const PASSES_MAX = 100;

const readStrip: Read = ({ strip }, base, problems) => {
  const count = strip.passes ?? 0;
  if (!Number.isInteger(count) || count < 1 || count > PASSES_MAX) {
    problems.passes = `Say how many passes: a whole number, 1 to ${PASSES_MAX}.`;
    return {};
  }
  const before = was('strip', base)?.passes ?? [];
  const passes = Array.from({ length: count }, (_, at) => ({
    ...before[at],
    ...readPass({ ...NO_PASS, ...strip.details[at] }, `passes.${at}`, problems),
  }));
  return {
    passes,
    launches: number(strip.launches, 'launches', problems),
    venue: text(strip.venue),
    weather: text(strip.weather),
  };
};

const readService: Read = ({ service }, _base, problems) => {
  if (service.items.length === 0) problems.items = 'Tick at least one item that was done.';
  const parts = service.parts.split('\n').filter((line) => line.trim() !== '');
  return {
    items: service.items,
    parts: parts.length === 0 ? undefined : parts,
    byWhom: text(service.byWhom),
    cost: text(service.cost),
    hourMeter: quantity({ text: service.hourMeter, unit: 'h' }),
    historyComplete: yes(service.historyComplete),
  };
};

const readNote: Read = ({ note }, _base, problems) => {
  if (note.trim() === '') problems.note = 'Write what is to be remembered.';
  return {};
};

/** Reads the part of a form that is its kind's own. */
export const READ_OWN: Readonly<Record<FormKind, Read>> = {
  oilCheck: readOilCheck,
  oilTopUp: readOilTopUp,
  oilChange: readOilChange,
  fuel: readFuel,
  odometer: readOdometer,
  drive: readDrive,
  session: readSession,
  strip: readStrip,
  service: readService,
  note: readNote,
  other: () => ({}),
};
