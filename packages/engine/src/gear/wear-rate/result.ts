import type { MeasuredReading } from '../result.ts';

/** What use of a part is counted in: the sort of use that has worn it most. */
export const WEAR_BASES = ['sessions', 'km', 'launches'] as const;
export type WearBasis = (typeof WEAR_BASES)[number];

/** Use of a part by sort: circuit and autocross sessions, kilometres of road and touring, launches. */
export type WearUse = { sessions: number; roadKm: number; launches: number };

/** Likely, and the bounds inside which it lies eight times in ten. */
export type Band = { likely: number; low: number; high: number };

/**
 * Use left until a minimum, in the basis, from now. `likely` null: no wear was seen yet. `high` null: so
 * little is known that it may last for ever.
 */
export type UseLeft = { likely: number | null; low: number; high: number | null };

export type WearPoint = {
  /** use of the part up to then in the basis, since it was new or first measured */
  use: number;
  /** mm or g */
  value: number;
  on: string;
  /** null: what it measured new, as its owner wrote it */
  entry: string | null;
};

/** Whose minimum it is. */
export type WearFloor = {
  whose: 'owner' | 'lawEu' | 'lawUs' | 'practice';
  mm: number;
};

/**
 * What the measurements of one position allow to say.
 * `line`: a rate that can be told from chance · `rough`: a rate from too few points for that · `flat`: no
 * wear seen yet · `single`: one measurement · `noUse`: several, without use worth speaking of between them
 * · `rises`: a later one is greater than can be by measuring alone, so there is no rate.
 */
export type WearFinding = 'line' | 'rough' | 'flat' | 'single' | 'noUse' | 'rises';

/** The line through the measurements, as `valueAfter()` takes it. Values in mm or g, use in the basis. */
export type WearLine = {
  /** use at the last measurement, and today */
  lastUse: number;
  nowUse: number;
  /** weighted middle of the measurements: there the line is best known */
  centreUse: number;
  centreValue: number;
  /** wear per unit of use, never below 0 */
  rate: number;
  centreVariance: number;
  rateVariance: number;
  /** variance added per unit of use since the last measurement: no day wears like another */
  driftPerUse: number;
  /** how many standard deviations the bounds lie from the likely value */
  reach: number;
};

export type PositionWear = {
  what: MeasuredReading['what'];
  corner: MeasuredReading['corner'];
  groove: string | null;
  /** in words: "front left, inner" */
  where: string;
  unit: 'mm' | 'g';
  finding: WearFinding;
  /** those of this life of the part, in order */
  points: WearPoint[];
  last: WearPoint;
  /** use since then, in the basis */
  useSince: number;
  /** null where use since the last measurement has no rate to go by */
  now: Band | null;
  /** wear per unit of use; null without two measurements apart in use */
  rate: Band | null;
  line: WearLine | null;
  /** the first measurement that is too great, and the least one before it */
  rise: { from: WearPoint; to: WearPoint } | null;
  /** the greatest first; none for what is weighed */
  floors: (WearFloor & { left: UseLeft | null })[];
};

export type ComponentWear = {
  basis: WearBasis;
  /** other sorts of use are counted in as well, by common practice */
  mixed: boolean;
  /** false: some use since the first measurement is not in the log, so it may have worn further */
  useKnown: boolean;
  /** it was never on a car in the log, so no use can be counted */
  neverFitted: boolean;
  /** pads alone: what a circuit day should begin with, at least */
  startOfDay: { mm: number; whose: 'owner' | 'practice' } | null;
  /** in order of corner and place */
  positions: PositionWear[];
};
