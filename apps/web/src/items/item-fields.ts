import {
  type AmountMeasure,
  type ItemDraft,
  type ItemInput,
  USE_CLASSES,
  type UseClass,
} from '@quartermark/engine/log';
import { type AtOnceFields, atOnceFields, noAtOnce, readAtOnce } from './at-once-fields.ts';
import {
  emptyLimit,
  type LimitFields,
  limitFields,
  type Problems,
  readField,
  readLimit,
} from './limit-fields.ts';

/** What the form of an item holds: everything as typed, also where it is switched off. */
export type ItemFields = {
  /** revision the fields were taken from; 0 for a new item. Kept with a draft, so that it is never sent over a newer one */
  baseRevision: number;
  name: string;
  role: ItemInput['role'];
  limits: LimitFields[];
  hardUse: {
    on: boolean;
    classes: Record<UseClass, boolean>;
    measure: AmountMeasure;
    percent: string;
    basis: 'limit' | 'used';
    limits: LimitFields[];
  };
  last: 'onRecord' | 'notOnRecord';
  lastDone: {
    on: string;
    time: string;
    odometer: { text: string; unit: 'km' | 'mi' };
    historyComplete: boolean;
  };
  atOnce: AtOnceFields;
  warnDays: string;
  leadDays: string;
  source: string;
};

const USUAL_HARD_USE: Record<UseClass, boolean> = {
  road: false,
  touring: false,
  circuit: true,
  strip: true,
  autocross: true,
};

/** @param unit what distances are typed in */
export function emptyItem(unit: 'km' | 'mi'): ItemFields {
  return {
    baseRevision: 0,
    name: '',
    role: 'other',
    limits: [emptyLimit('km', unit)],
    hardUse: {
      on: false,
      classes: { ...USUAL_HARD_USE },
      measure: 'km',
      percent: '',
      basis: 'limit',
      limits: [emptyLimit('km', unit)],
    },
    last: 'notOnRecord',
    lastDone: { on: '', time: '', odometer: { text: '', unit }, historyComplete: false },
    atOnce: noAtOnce(),
    warnDays: '14',
    leadDays: '0',
    source: '',
  };
}

/** A stored item as its form shows it. @param unit what distances are typed in */
export function itemFields(item: ItemInput, revision: number, unit: 'km' | 'mi'): ItemFields {
  const empty = emptyItem(unit);
  const { severe, baseline } = item;
  return {
    baseRevision: revision,
    name: item.name,
    role: item.role,
    limits: item.limits.map((limit) => limitFields(limit, unit)),
    hardUse: severe
      ? {
          on: true,
          classes: classesOf(severe.classes),
          measure: severe.measure,
          percent: String(Number((severe.share * 100).toPrecision(12))),
          basis: severe.basis,
          limits: severe.limits.map((limit) => limitFields(limit, unit)),
        }
      : empty.hardUse,
    last: baseline ? 'onRecord' : 'notOnRecord',
    lastDone: baseline
      ? {
          on: baseline.on,
          time: baseline.time ?? '',
          odometer: baseline.odometer ?? { text: '', unit },
          historyComplete: baseline.historyComplete ?? false,
        }
      : empty.lastDone,
    atOnce: atOnceFields(item),
    warnDays: String(item.warnDays),
    leadDays: String(item.leadDays),
    source: item.source ?? '',
  };
}

function classesOf(chosen: readonly UseClass[]): Record<UseClass, boolean> {
  const classes = { ...USUAL_HARD_USE };
  for (const use of USE_CLASSES) classes[use] = chosen.includes(use);
  return classes;
}

function readHardUse({ hardUse }: ItemFields, problems: Problems): Pick<ItemDraft, 'severe'> {
  if (!hardUse.on) return {};
  const classes = USE_CLASSES.filter((use) => hardUse.classes[use]);
  if (classes.length === 0)
    problems['item.severe.classes'] = 'Tick at least one kind of use that is hard on it.';
  const percent = readField(hardUse.percent, 'item.severe.share', problems, false);
  if (!problems['item.severe.share'] && (percent <= 0 || percent > 100))
    problems['item.severe.share'] =
      `${hardUse.percent} % cannot be reached or is passed at once; give more than 0, at most 100.`;
  const limits = hardUse.limits.map((limit, at) =>
    readLimit(limit, `item.severe.limits.${at}`, problems),
  );
  const share = Number((percent / 100).toPrecision(12));
  return { severe: { classes, measure: hardUse.measure, share, basis: hardUse.basis, limits } };
}

function readLastDone(fields: ItemFields, problems: Problems): Pick<ItemDraft, 'baseline'> {
  if (fields.last === 'notOnRecord') return {};
  const { on, time, odometer, historyComplete } = fields.lastDone;
  if (on === '')
    problems['item.baseline.on'] =
      'Give the day it was last done, or choose that it is not on record.';
  return {
    baseline: {
      on,
      ...(time === '' ? {} : { time }),
      ...(odometer.text.trim() === '' ? {} : { odometer }),
      ...(historyComplete ? { historyComplete } : {}),
    },
  };
}

/**
 * What the form holds as the server takes it, or what is wrong with its fields. What was left empty is
 * left out; ranges are judged by the server.
 */
export function readItem(fields: ItemFields): { item: ItemDraft } | { problems: Problems } {
  const problems: Problems = {};
  if (fields.name.trim() === '')
    problems['item.name'] = 'Fill in a name, such as what the manual calls it.';
  const limits = fields.limits.map((limit, at) => readLimit(limit, `item.limits.${at}`, problems));
  const severe = readHardUse(fields, problems);
  const baseline = readLastDone(fields, problems);
  const atOnce = readAtOnce(fields.atOnce, problems);
  const days = (typed: string, path: string) =>
    typed.trim() === '' ? undefined : readField(typed, path, problems, true);
  const warnDays = days(fields.warnDays, 'item.warnDays');
  const leadDays = days(fields.leadDays, 'item.leadDays');
  if (Object.keys(problems).length > 0) return { problems };
  return {
    item: {
      name: fields.name,
      role: fields.role,
      limits,
      ...severe,
      ...baseline,
      ...atOnce,
      ...(warnDays === undefined ? {} : { warnDays }),
      ...(leadDays === undefined ? {} : { leadDays }),
      ...(fields.source.trim() === '' ? {} : { source: fields.source }),
    },
  };
}
