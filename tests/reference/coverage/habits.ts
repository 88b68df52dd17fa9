import type { Draws } from './draws.ts';

export type OutingClass = 'circuit' | 'autocross' | 'strip' | 'touring';

/** Who drives a car and how, as only its maker here knows. */
export type Habits = {
  /** what the log says of the hemisphere; the season may turn all the same */
  hemisphere: 'N' | 'S' | null;
  /** month of most use, 0 to 11 */
  peak: number;
  everyday: {
    /** chance of a trip on a weekday and on a day of the weekend */
    weekday: number;
    weekend: number;
    /** median of a trip, km, and the spread of its logarithm */
    km: number;
    spread: number;
    swing: number;
  };
  outings: {
    useClass: OutingClass;
    perYear: number;
    swing: number;
    /** usual sessions, or launches on the strip */
    count: number;
    spread: number;
    kmEach: number;
    hoursEach: number;
    days: number;
  } | null;
  /** growth of all use by the year, and how far its level wanders in four weeks (logarithm) */
  growth: number;
  wander: number;
  /** day of the year on which it is laid up, and for how long */
  layUp: { begins: number; days: number; logged: boolean; toldAhead: boolean } | null;
  /** share of outings that come onto the calendar, how long before, and how many are called off */
  plans: number;
  leadDays: number;
  calledOff: number;
  /** days between readings; null: the car has no meter, every trip is written down */
  readingEvery: number | null;
  /** share of outings nobody writes down */
  forgotten: number;
};

const KINDS = [
  'commuter',
  'weekend',
  'tourer',
  'mixed',
  'track',
  'club',
  'strip',
  'autocross',
] as const;
export type Kind = (typeof KINDS)[number];

const TRIPS: Record<Kind, [weekday: number, weekend: number, km: number]> = {
  commuter: [0.85, 0.5, 24],
  weekend: [0.05, 0.45, 50],
  tourer: [0.15, 0.35, 40],
  mixed: [0.5, 0.5, 22],
  track: [0, 0, 0],
  club: [0.1, 0.3, 35],
  strip: [0.04, 0.2, 20],
  autocross: [0.6, 0.4, 20],
};

function outingsOf(kind: Kind, r: Draws): Habits['outings'] {
  const often = (perYear: number) => perYear * r.lognormal(1, 0.4);
  const swing = r.between(0.3, 0.9);
  switch (kind) {
    case 'commuter':
    case 'weekend':
      return null;
    case 'tourer':
      return {
        useClass: 'touring',
        perYear: often(4),
        swing,
        count: 0,
        spread: 0.5,
        kmEach: 700,
        hoursEach: 0,
        days: 3,
      };
    case 'strip':
      return {
        useClass: 'strip',
        perYear: often(9),
        swing,
        count: 6,
        spread: 0.4,
        kmEach: 0.8,
        hoursEach: 0.03,
        days: 1,
      };
    case 'autocross':
      return {
        useClass: 'autocross',
        perYear: often(8),
        swing,
        count: 5,
        spread: 0.3,
        kmEach: 5,
        hoursEach: 0.1,
        days: 1,
      };
    case 'mixed':
    case 'track':
    case 'club': {
      const perYear = often(kind === 'club' ? 5 : 9);
      const count = kind === 'mixed' ? 4 : 5;
      return {
        useClass: 'circuit',
        perYear,
        swing,
        count,
        spread: 0.35,
        kmEach: 38,
        hoursEach: 0.38,
        days: r.chance(0.2) ? 2 : 1,
      };
    }
  }
}

/** Draws a car with its driver. Ranges are guesses of everyday sense, no source. */
export function drawHabits(r: Draws): Habits & { kind: Kind } {
  const kind = r.oneOf(KINDS);
  const south = r.chance(0.2);
  const [weekday, weekend, km] = TRIPS[kind];
  const more = r.lognormal(1, 0.35);
  return {
    kind,
    hemisphere: r.chance(0.15) ? null : south ? 'S' : 'N',
    peak: ((south ? 0 : 6) + r.whole(-1, 1) + 12) % 12,
    everyday: {
      weekday: Math.min(0.95, weekday * more),
      weekend: Math.min(0.95, weekend * more),
      km: km * r.lognormal(1, 0.4),
      spread: r.between(0.2, 0.9),
      swing: r.between(0, 0.5),
    },
    outings: outingsOf(kind, r),
    growth: r.chance(0.3) ? r.between(-0.5, 0.5) : r.between(-0.1, 0.1),
    wander: r.between(0, 0.12),
    layUp: r.chance(kind === 'commuter' ? 0.05 : 0.4)
      ? {
          begins: ((south ? 120 : 305) + r.whole(-20, 20)) % 365,
          days: r.whole(90, 160),
          logged: r.chance(0.85),
          toldAhead: r.chance(0.7),
        }
      : null,
    plans: r.oneOf([0, 0.3, 0.7, 1]),
    leadDays: r.between(30, 120),
    calledOff: 0.08,
    readingEvery: kind === 'track' || r.chance(0.12) ? null : r.oneOf([7, 14, 25, 40, 55]),
    forgotten: 0.03,
  };
}
