import {
  AMOUNT_MEASURES,
  type AmountMeasure,
  type Limit,
  type Measure,
  readNumber,
  USE_CLASSES,
  type UseClass,
} from '@quartermark/engine/log';

/** One limit as a form holds it: everything as typed. What a measure does not need stays unused. */
export type LimitFields = {
  measure: Measure;
  amount: string;
  unit: 'km' | 'mi';
  /** the date on a label */
  date: string;
  weights: Record<UseClass, string>;
};

/** What is wrong with fields, by the dotted path the server would name. */
export type Problems = Record<string, string>;

const NO_WEIGHTS: Record<UseClass, string> = {
  road: '',
  touring: '',
  circuit: '',
  strip: '',
  autocross: '',
};

export function isAmountMeasure(measure: Measure): measure is AmountMeasure {
  return AMOUNT_MEASURES.some((known) => known === measure);
}

export function emptyLimit(measure: Measure, unit: 'km' | 'mi'): LimitFields {
  return { measure, amount: '', unit, date: '', weights: { ...NO_WEIGHTS } };
}

/** @param unit what a distance would be typed in, for limits that have no unit */
export function limitFields(limit: Limit, unit: 'km' | 'mi'): LimitFields {
  const empty = emptyLimit(limit.measure, unit);
  if (limit.measure === 'date') return { ...empty, date: limit.value };
  const amount = String(limit.value);
  if (limit.measure === 'months' || limit.measure === 'days') return { ...empty, amount };
  const weights = { ...NO_WEIGHTS };
  for (const use of USE_CLASSES) {
    const weight = limit.weights?.[use];
    if (weight !== undefined) weights[use] = String(weight);
  }
  return { ...empty, amount, weights, unit: limit.measure === 'km' ? limit.unit : unit };
}

/** Reads a number; what cannot be read becomes a problem at `path`, and 0 in its place. */
export function readField(
  typed: string,
  path: string,
  problems: Problems,
  grouping: boolean,
): number {
  const read = readNumber(typed, grouping);
  if ('value' in read) return read.value;
  problems[path] = read.problem.charAt(0).toUpperCase() + read.problem.slice(1);
  return 0;
}

function readWeights(
  fields: LimitFields,
  path: string,
  problems: Problems,
): { weights?: Partial<Record<UseClass, number>> } {
  const typed = USE_CLASSES.filter((use) => fields.weights[use].trim() !== '');
  if (typed.length === 0) return {};
  const weights: Partial<Record<UseClass, number>> = {};
  for (const use of typed)
    weights[use] = readField(fields.weights[use], `${path}.weights.${use}`, problems, false);
  return { weights };
}

/**
 * A limit as the server takes it. A comma groups thousands ("10,000"), as nobody limits anything to
 * thousandths; in a weight it is a decimal comma.
 *
 * @param path of the limit, such as `item.limits.0`
 */
export function readLimit(fields: LimitFields, path: string, problems: Problems): Limit {
  const { measure, unit } = fields;
  if (measure === 'date') {
    if (fields.date === '') problems[`${path}.value`] = 'Give the date that is on the label.';
    return { measure, value: fields.date };
  }
  const value = readField(fields.amount, `${path}.value`, problems, true);
  if (measure === 'months' || measure === 'days') return { measure, value };
  const weights = readWeights(fields, path, problems);
  return measure === 'km' ? { measure, value, unit, ...weights } : { measure, value, ...weights };
}
