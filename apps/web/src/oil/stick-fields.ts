import type { EntryDraft } from '@quartermark/engine/log';
import { readNumber, volumeL } from '@quartermark/engine/log';
import type { AroundABottle } from '@quartermark/engine/oil';

type Bottle = { text: string; unit: 'l' | 'ml' | 'usQt' | 'usGal' | 'impQt' | 'impGal' };

/** What the guided reading holds, as typed; lengths in mm on the stick. */
export type StickFields = {
  /** between the two marks */
  marks: string;
  /** above MIN, negative below it */
  before: string;
  beforeAgain: string;
  poured: Bottle;
  after: string;
  afterAgain: string;
};

type Problems = Record<string, string>;

/** What the fields say, as far as they are filled in. */
export type StickRead = {
  problems: Problems;
  /** null until everything that is needed is there and right */
  around: (AroundABottle & { poured: Bottle }) | null;
  /** the last level lies over MAX */
  over: boolean;
};

/** What one can read off a stick, in mm: beyond it the number is mistyped. */
const MARKS_MM = { min: 3, max: 200 };
/** As far outside the marks as a level can be told, in spans. */
const OUTSIDE = { below: -0.5, above: 1.6 };

export function emptyStick(unit: Bottle['unit']): StickFields {
  return {
    marks: '',
    before: '',
    beforeAgain: '',
    poured: { text: '', unit },
    after: '',
    afterAgain: '',
  };
}

/** Reads what is filled in; an empty field is no problem, only not there yet. */
export function readStick(fields: StickFields): StickRead {
  const problems: Problems = {};
  const number = (name: keyof StickFields, typed: string): number | null => {
    if (typed.trim() === '') return null;
    const read = readNumber(typed, false);
    if ('value' in read) return read.value;
    problems[name] = sentence(read.problem);
    return null;
  };
  const marks = number('marks', fields.marks);
  if (marks !== null && (marks < MARKS_MM.min || marks > MARKS_MM.max))
    problems.marks = `${fields.marks} mm is outside ${MARKS_MM.min} to ${MARKS_MM.max}; measure from the line of one mark to that of the other, in mm.`;
  const level = (name: 'before' | 'beforeAgain' | 'after' | 'afterAgain'): number | null => {
    const mm = number(name, fields[name]);
    if (mm === null || marks === null || problems.marks !== undefined) return null;
    const fraction = mm / marks;
    if (fraction >= OUTSIDE.below && fraction <= OUTSIDE.above) return fraction;
    problems[name] =
      `${fields[name]} mm is too far outside the marks, which lie ${fields.marks} mm apart; measure from MIN up to the edge of the oil.`;
    return null;
  };
  const before = [level('before'), level('beforeAgain')];
  const after = [level('after'), level('afterAgain')];
  const pouredL = readBottle(fields.poured, problems);
  const whole = before[0] !== null && after[0] !== null && pouredL !== null;
  const some = (levels: (number | null)[]) => levels.flatMap((one) => one ?? []);
  if (whole && Object.keys(problems).length === 0 && mean(some(after)) <= mean(some(before)))
    problems.after =
      'The level did not rise. Wait until the oil has run down, read again by the procedure, and measure from MIN.';
  const right = whole && Object.keys(problems).length === 0;
  return {
    problems,
    around: right
      ? { before: some(before), after: some(after), pouredL, poured: fields.poured }
      : null,
    over: some(after).some((fraction) => fraction > 1),
  };
}

/** Litres that can be poured between two marks; outside it the number or its unit was mistyped. */
const POURED_L = { min: 0.05, max: 5 };

function readBottle(poured: Bottle, problems: Problems): number | null {
  if (poured.text.trim() === '') return null;
  const read = readNumber(poured.text, false);
  if ('problem' in read) {
    problems.poured = sentence(read.problem);
    return null;
  }
  const litres = volumeL(poured);
  if (litres >= POURED_L.min && litres <= POURED_L.max) return litres;
  problems.poured = `${poured.text} ${poured.unit} is outside ${POURED_L.min} to ${POURED_L.max} litres; check the number and its unit.`;
  return null;
}

const sentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;

const mean = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const hundredths = (value: number) => Math.round(value * 100) / 100;

type Of = {
  id: string;
  car: string;
  garage: { today: string; zone: string };
  dipstick:
    | { state: 'hotIdle' | 'hotStopped' | 'cold'; minutesAfterStop?: number | undefined }
    | undefined;
};

/** The bottle as an entry of the log: the oil is in the engine, whatever becomes of the span. */
export function bottleEntry(
  { before, after, poured }: NonNullable<StickRead['around']>,
  { id, car, garage, dipstick }: Of,
): EntryDraft {
  const level = (read: readonly number[]) => ({
    how: 'fraction' as const,
    fraction: hundredths(mean(read)),
    // read with a ruler
    step: 0.05,
  });
  return {
    id,
    kind: 'oilTopUp',
    on: garage.today,
    zone: garage.zone,
    car,
    volume: poured,
    levelBefore: level(before),
    levelAfter: level(after),
    ...(dipstick && { condition: dipstick }),
  };
}
