/** What somebody read around a measured bottle; fractions of the way from MIN (0) to MAX (1). */
export type AroundABottle = {
  /** at least one each; several readings of the same level show how well it can be read */
  before: readonly number[];
  after: readonly number[];
  /** litres poured in between, > 0 */
  pouredL: number;
};

/** Litres between MIN and MAX as a bottle shows them. */
export type LearntSpan = {
  likelyL: number;
  /** eight times in ten it lies between them; `highL` null: no upper bound can be given */
  lowL: number;
  highL: number | null;
  /** standard deviation of one reading, fraction of the span */
  readingSd: number;
  /** `fine` to keep, `rough`, or so little of a rise that it says nothing: pour more between */
  finding: 'fine' | 'rough' | 'tooLittle';
};

/** Of one reading of a stick, as the ledger takes it, and how many degrees of freedom that counts for. */
const READING = { sd: 0.09, degrees: 4 };
/** Of a bottle's own marks. */
const VOLUME_SD = 0.03;
const EIGHT_IN_TEN = 1.2815515655446004;
const FINE = 0.2;
const ROUGH = 0.4;

/**
 * Learns the span of a stick from readings around a measured bottle.
 *
 * span = poured / (mean after - mean before); its relative spread is that of the rise and of the bottle's marks
 * (3 %) together. The spread of a reading is what the repeats show, with the usual one counted as four degrees
 * of freedom.
 *
 * @returns null where the level did not rise
 * Source: common practice of workshops (pour a known amount, look how far it rises); the spread by own reckoning,
 * no published source.
 * @example learnSpan({ before: [0.2, 0.2], after: [0.7, 0.7], pouredL: 0.5 })?.likelyL // 1
 */
export function learnSpan({ before, after, pouredL }: AroundABottle): LearntSpan | null {
  const rise = meanOf(after) - meanOf(before);
  if (!(rise > 0) || !(pouredL > 0)) return null;
  const degrees = before.length + after.length - 2;
  const squares = squaresOf(before) + squaresOf(after);
  const readingSd = Math.sqrt(
    (READING.degrees * READING.sd ** 2 + squares) / (READING.degrees + degrees),
  );
  const riseSd = readingSd * Math.sqrt(1 / before.length + 1 / after.length);
  const relative = Math.hypot(riseSd / rise, VOLUME_SD);
  const likelyL = pouredL / rise;
  const reach = EIGHT_IN_TEN * relative;
  return {
    likelyL,
    lowL: likelyL / (1 + reach),
    highL: reach < 1 ? likelyL / (1 - reach) : null,
    readingSd,
    finding: relative <= FINE ? 'fine' : relative <= ROUGH ? 'rough' : 'tooLittle',
  };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function squaresOf(values: readonly number[]): number {
  const mean = meanOf(values);
  return values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
}
