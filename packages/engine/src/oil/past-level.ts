import { type Bank, heaviestOf, REPAIR_VARIANCE, STEP_VARIANCE } from './bank.ts';
import { type DriveRoom, driveBy, driveRoom } from './drive.ts';
import {
  absorb,
  emptyHypothesis,
  type Hypothesis,
  LEVEL,
  type OilPriors,
  ROAD,
  SIZE,
  STEP,
  startAt,
} from './hypothesis.ts';
import { add, type Observed, observe, reset } from './observe.ts';
import type { EntryRef, OilOperation, OilStep } from './operation.ts';
import { type Moved, type Smoothed, smooth } from './smoother.ts';

/** The likely level at an entry, before and after what happened there, in the light of the whole log. */
export type PastLevel = { entry: EntryRef; before: Smoothed; after: Smoothed };

/**
 * Draws the past level: a forward pass of the account that explains the log best, then the smoother.
 *
 * @param bank the ledger's, after the same operations: says which steps led to its heaviest account
 * @returns one per operation, litres from MAX
 */
export function pastLevels(
  spanL: number,
  priors: OilPriors,
  operations: readonly OilOperation[],
  bank: Bank,
): PastLevel[] {
  const { steps: stepsBorn } = heaviestOf(bank);
  const h = emptyHypothesis();
  startAt(h, spanL, priors);
  const pass = new Pass(h, spanL);
  const marks = operations.map(({ entry, drive, steps }, index) => {
    for (const { before, size } of stepsBorn) if (before === index) pass.step(size);
    const before = pass.drive(drive);
    for (const step of steps) pass.take(step);
    return { entry, before, after: pass.steps.length - 1 };
  });
  const smoothed = smooth(pass.steps);
  const at = (index: number) => smoothed[index] ?? { mean: h.x[LEVEL] as number, sd: 0 };
  return marks.map(({ entry, before, after }) => ({
    entry,
    before: at(before),
    after: at(after),
  }));
}

/** One hypothesis on its way through the log, with a record of each step. */
class Pass {
  readonly steps: Moved[] = [];
  readonly #h: Hypothesis;
  readonly #spanL: number;
  readonly #room: DriveRoom = driveRoom();
  readonly #gain = new Float64Array(SIZE);
  readonly #observed: Observed = { verdict: 'sound', logLikelihood: 0, weight: 1, variance: 1 };

  constructor(h: Hypothesis, spanL: number) {
    this.#h = h;
    this.#spanL = spanL;
  }

  /** Index of the step that holds the level after the drive. */
  drive(drive: OilOperation['drive']): number {
    driveBy(this.#h, drive, this.#room);
    const row = this.#room.row.slice();
    if (drive.road + drive.circuit + drive.runs <= 0) row.fill(0).set([1], LEVEL);
    this.#keep({ did: 'predict', row });
    return this.steps.length - 1;
  }

  step(size: number): void {
    absorb(this.#h);
    this.#h.x[STEP] = size;
    this.#h.p[STEP * SIZE + STEP] = STEP_VARIANCE;
    this.#keep({ did: 'absorb', from: STEP, into: ROAD });
  }

  take(step: OilStep): void {
    const h = this.#h;
    switch (step.does) {
      case 'list':
        return;
      case 'add':
        add(h, step.volumeL, step.sdL);
        this.#keep({ did: 'predict', row: identityRow() });
        return;
      case 'reset':
        reset(h, step.levelL, step.sdL);
        this.#keep({ did: 'reset', member: LEVEL });
        return;
      case 'repair':
        h.p[ROAD * SIZE + ROAD] = (h.p[ROAD * SIZE + ROAD] as number) + REPAIR_VARIANCE;
        this.#keep({ did: 'predict', row: identityRow() });
        return;
      case 'observe':
        this.#observe(step);
    }
  }

  #observe({ levelL, sdL, tag }: Extract<OilStep, { does: 'observe' }>): void {
    const h = this.#h;
    const v = levelL - (h.x[LEVEL] as number);
    const out = this.#observed;
    observe(h, levelL, sdL, tag, this.#spanL, { gain: this.#gain }, out);
    if (out.verdict === 'movedUp' || out.verdict === 'movedDown') {
      // the level was learnt anew: nothing before it explains it
      this.#keep({ did: 'reset', member: LEVEL });
      return;
    }
    const { weight, variance: f } = out;
    this.#keep({ did: 'update', v, f, weight, gain: this.#gain.slice() });
  }

  #keep(step: DistributiveOmit<Moved, 'x' | 'p'>): void {
    this.steps.push({ ...step, x: this.#h.x.slice(), p: this.#h.p.slice() });
  }
}

type DistributiveOmit<T, K extends PropertyKey> = T extends unknown ? Omit<T, K> : never;

function identityRow(): Float64Array {
  const row = new Float64Array(SIZE);
  row[LEVEL] = 1;
  return row;
}
