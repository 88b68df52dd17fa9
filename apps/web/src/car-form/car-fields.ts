import type { CarDraft, CarInput, CarProfile } from '@quartermark/engine/log';
import { readNumber } from '@quartermark/engine/log';

type Drafted = NonNullable<CarDraft['profile']>;

/** What the forms of a car hold: everything as typed, `''` where nothing is said. */
export type CarFields = {
  /** revision the fields were taken from; 0 for a new car. Kept with a draft, so that it is never sent over a newer one */
  baseRevision: number;
  name: string;
  unit: 'km' | 'mi';
  odoDigits: string;
  status: '' | NonNullable<CarProfile['status']>;
  sump: '' | NonNullable<CarProfile['sump']>;
  induction: '' | NonNullable<CarProfile['induction']>;
  drive: '' | NonNullable<CarProfile['drive']>;
  fuel: '' | NonNullable<CarProfile['fuel']>;
  octane: string;
  gearbox: string;
  wheelFixing: '' | NonNullable<CarProfile['wheelFixing']>;
  discMaterial: '' | NonNullable<CarProfile['discMaterial']>;
  airSuspension: '' | 'yes' | 'no';
  noiseDb: string;
  liftPoints: string;
  oilSpanL: string;
  oilCapacityL: string;
  dipstick: '' | NonNullable<CarProfile['dipstick']>['state'];
  minutesAfterStop: string;
  oilGrade: string;
  oilApproval: string;
  oilLimitLPer1000Km: string;
};

const text = (value: number | undefined) => (value === undefined ? '' : String(value));

/** A stored car as its form shows it. */
export function carFields({ name, unit, odoDigits, profile }: CarInput, revision: number) {
  const { airSuspension, dipstick } = profile;
  const fields: CarFields = {
    baseRevision: revision,
    name,
    unit,
    odoDigits: text(odoDigits),
    status: profile.status ?? '',
    sump: profile.sump ?? '',
    induction: profile.induction ?? '',
    drive: profile.drive ?? '',
    fuel: profile.fuel ?? '',
    octane: text(profile.octane),
    gearbox: profile.gearbox ?? '',
    wheelFixing: profile.wheelFixing ?? '',
    discMaterial: profile.discMaterial ?? '',
    airSuspension: airSuspension === undefined ? '' : airSuspension ? 'yes' : 'no',
    noiseDb: text(profile.noiseDb),
    liftPoints: profile.liftPoints ?? '',
    oilSpanL: text(profile.oilSpanL),
    oilCapacityL: text(profile.oilCapacityL),
    dipstick: dipstick?.state ?? '',
    minutesAfterStop: text(dipstick?.minutesAfterStop),
    oilGrade: profile.oilGrade ?? '',
    oilApproval: profile.oilApproval ?? '',
    oilLimitLPer1000Km: text(profile.oilLimitLPer1000Km),
  };
  return fields;
}

/** A car nobody has said anything of. @param unit of its odometer */
export function emptyCar(unit: 'km' | 'mi'): CarFields {
  return carFields({ name: '', unit, profile: {} }, 0);
}

const NUMBERS = ['octane', 'noiseDb', 'oilSpanL', 'oilCapacityL', 'oilLimitLPer1000Km'] as const;
const LINES = ['gearbox', 'liftPoints', 'oilGrade', 'oilApproval'] as const;

type Problems = Record<string, string>;

function readNumberAt(typed: string, path: string, problems: Problems): number {
  const read = readNumber(typed, false);
  if ('value' in read) return read.value;
  problems[path] = read.problem.charAt(0).toUpperCase() + read.problem.slice(1);
  return 0;
}

function dipstickOf(fields: CarFields, problems: Problems): Pick<Drafted, 'dipstick'> {
  const { dipstick: state, minutesAfterStop: typed } = fields;
  const at = 'car.profile.dipstick.minutesAfterStop';
  if (state === '') {
    if (typed.trim() !== '') problems[at] = 'Say above how the stick is read, or leave this empty.';
    return {};
  }
  if (typed.trim() === '') return { dipstick: { state } };
  return { dipstick: { state, minutesAfterStop: readNumberAt(typed, at, problems) } };
}

/**
 * What the form holds as the server takes it, or what is wrong with its fields. What was left empty is
 * left out; ranges are judged by the server.
 */
export function readCar(fields: CarFields): { car: CarDraft } | { problems: Problems } {
  const problems: Problems = {};
  if (fields.name.trim() === '') problems['car.name'] = 'Fill in a name, such as what you call it.';
  const { status, sump, induction, drive, fuel, wheelFixing, discMaterial, airSuspension } = fields;
  const profile: Drafted = {
    ...(status === '' ? {} : { status }),
    ...(sump === '' ? {} : { sump }),
    ...(induction === '' ? {} : { induction }),
    ...(drive === '' ? {} : { drive }),
    ...(fuel === '' ? {} : { fuel }),
    ...(wheelFixing === '' ? {} : { wheelFixing }),
    ...(discMaterial === '' ? {} : { discMaterial }),
    ...(airSuspension === '' ? {} : { airSuspension: airSuspension === 'yes' }),
    ...dipstickOf(fields, problems),
  };
  for (const part of NUMBERS)
    if (fields[part].trim() !== '')
      profile[part] = readNumberAt(fields[part], `car.profile.${part}`, problems);
  for (const part of LINES) if (fields[part].trim() !== '') profile[part] = fields[part];
  if (Object.keys(problems).length > 0) return { problems };
  const digits = fields.odoDigits === '' ? {} : { odoDigits: Number(fields.odoDigits) };
  return { car: { name: fields.name, unit: fields.unit, ...digits, profile } };
}
