import type { Book } from '../log/book.ts';
import type { Entry } from '../log/entry.ts';
import type { Gear } from '../log/gear.ts';
import type { Item } from '../log/item.ts';
import type { Analysis } from '../wear/result.ts';
import type { ComponentWear } from './wear-rate/result.ts';

/** What is to be said of one component, piece of equipment or person, and all that it rests on. */
export type GearBook = {
  gear: Gear;
  /** civil date the answer is for */
  asOf: string;
  zone: string;
  /** its own items */
  items: readonly Item[];
  /** every car it was ever fitted to; a car not given adds nothing and makes its totals a lower bound */
  cars: readonly Book[];
  /**
   * about the gear itself and services of its items, tombstones included, in any order; what a car's
   * book has too counts once
   */
  entries: readonly Entry[];
};

export type GearAnalysis = {
  analysis: Pick<Analysis, 'items' | 'flags' | 'asOf' | 'engineVersion'>;
  /** null for equipment and people */
  life: ComponentLife | null;
};

/** A component's time on one car, in one place. */
export type FitWindow = {
  car: string;
  /** as written; empty where nobody said */
  positions: readonly string[];
  /** civil date it went on */
  start: string;
  /** minute of that day as the log sorts it; null = not said, counts as noon */
  startMinute: number | null;
  /** civil date it came off; null = it is on */
  end: string | null;
  endMinute: number | null;
  /** the entry that put it there */
  entry: string;
  /** the entry that ended it */
  closedBy: string | null;
  /** the log puts it in two places at once: this window was cut, or cut another, short */
  conflict: boolean;
};

/** `amount` null: nothing is known of it. `known` false: at least that much. */
export type LifeTotal = { amount: number | null; known: boolean };

export const BEDDINGS = ['bedded', 'firstSession', 'notBedded', 'unknown'] as const;
export type Bedding = (typeof BEDDINGS)[number];

export type ComponentLife = {
  /** km */
  distanceKm: LifeTotal;
  /** h */
  hours: LifeTotal;
  sessions: LifeTotal;
  launches: LifeTotal;
  /** day it came new, or was made new; null for a part whose earlier life nobody knows */
  newSince: string | null;
  /** in order */
  windows: readonly FitWindow[];
  /** where it is today; null = on no car */
  fitted: FitWindow | null;
  /** use since it was last fitted; null while it is on no car */
  sinceFitted: { distanceKm: number; hours: number; sessions: number; launches: number } | null;
  /** pads and discs alone */
  bedding: Bedding | null;
  /** in order */
  measured: readonly MeasuredRow[];
  /** what the measurements of this life say of how fast it wears; null where there are none */
  wear: ComponentWear | null;
  /** the four-digit date code of a tyre, from the last measurement that gives one, else its own */
  ageFrom: { year: number; week: number } | null;
  /** why that code tells no age, in words that say how to mend it; null where it does or there is none */
  ageUnread: string | null;
};

export type MeasuredReading = {
  what: 'tread' | 'padInner' | 'padOuter' | 'disc';
  corner: 'frontLeft' | 'frontRight' | 'rearLeft' | 'rearRight';
  groove: string | null;
  /** in words: "front left, inner groove" */
  where: string;
  mm: number | null;
  /** carbon-ceramic discs are weighed */
  g: number | null;
};

export type MeasuredRow = {
  entry: string;
  on: string;
  readings: MeasuredReading[];
  /** the component's own use up to then; null where nothing is known of it */
  sessionsThen: number | null;
  kmThen: number | null;
};

/** Why a fit cannot be recorded as it stands. */
export type FitProblem = { code: 'alreadyFitted'; car: string; since: string };
