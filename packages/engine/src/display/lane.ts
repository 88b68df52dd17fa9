import type { CarStatus, Stop } from '../matters/result.ts';
import type { Verdict } from '../readiness/result.ts';
import type { ItemState, ReasonCode, Trigger } from '../wear/result.ts';
import type { OilStop } from './oil-stop-sentence.ts';

/** What the overview shows of a car: at most 1 KB as JSON, so names are cut to 60 characters. */
export type Lane = {
  /** the most urgent items, at most three, most urgent first */
  next: LaneItem[];
  odometer: { readingKm: number; on: string } | null;
  level: {
    fraction: number | null;
    mark: 'none' | 'over' | null;
    on: string;
    addedSinceL: number;
    changedSince: boolean;
  } | null;
  /** what the ledger says; null where it says nothing */
  oil: LaneOil | null;
  laidUp: { since: string; until: string | null } | null;
  status: CarStatus;
  /** the worst of what forbids driving it; null = nothing on record does */
  stop: Stop | null;
  /** whether it is ready for the road, by the log; null: not in use */
  road: LaneRoad | null;
  /** open findings and incidents, however small */
  open: number;
  /** entries that need a look (odd readings and the like) */
  flags: number;
};

export type LaneRoad = {
  word: Verdict['word'];
  /** the civil date by which all blocking work can be done; with `canBeReady` alone */
  by: string | null;
  /** of the first blocking need that is not met, at most 80 characters; null where all are */
  why: string | null;
  /** blocking needs that are not met */
  needs: number;
};

export type LaneOil = {
  /** likely level, fraction of the way from MIN to MAX, in two decimals; null: too few readings yet */
  level: { low: number; likely: number; high: number } | null;
  /** it is known roughly, so far */
  rough: boolean;
  stop: OilStop | null;
};

export type LaneItem = {
  id: string;
  name: string;
  state: ItemState;
  reasonCode: ReasonCode | null;
  /** with reasonCode `trigger`: what happened, and the day */
  cause?: Pick<Trigger, 'code' | 'on'>;
  /** measure of the limit the state rests on, with ":severe"; null without a limit that could be judged */
  binding: string | null;
  /** that limit's value in km, hours, sessions, launches, months or days; null for a label's date */
  limit: number | null;
  /** km, hours, sessions or launches left; negative when over; null for a calendar limit */
  remaining: number | null;
  /** unit in which the limit was typed, where it is a distance */
  unit: 'km' | 'mi' | null;
  /** the calendar limit's day, or the day an amount limit was reached */
  day: string | null;
  /** absent where it is known; false: `remaining` is the most that can be left */
  known?: false;
  /**
   * the day it falls due likely, and the day it could be as early as, null beyond three years; absent
   * where there is no forecast and for what is overdue or not known
   */
  likely?: string | null;
  early?: string | null;
  /** more likely than not past its limit by now, by what is expected since the last reading */
  readingNeeded?: true;
};
