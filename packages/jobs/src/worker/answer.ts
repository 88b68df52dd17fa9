import type { RoadAsked } from '@quartermark/db';
import { type Analysis, analyseBook, oilYearAgo } from '@quartermark/engine';
import {
  type DueLine,
  dueLinesOf,
  type Lane,
  laneOf,
  type OilLine,
  oilLineOf,
  urgencyOf,
} from '@quartermark/engine/display';
import { type CarStatus, type Stop, stopOf } from '@quartermark/engine/matters';
import { type CarReadiness, carReadiness } from '@quartermark/engine/readiness';
import { type SaidLine, saidOf } from '@quartermark/engine/said';

/** What is stored of a car: the whole analysis and what the overview shows of it. */
export type Answer = {
  analysis: Analysis;
  /** whether it is ready for the road; null: it is not in use */
  road: CarReadiness | null;
  lane: Lane;
  /** what falls due, item by item */
  lines: DueLine[];
  /** what it says of when its items fall due, to be held against it later */
  said: SaidLine[];
  /** what its oil is compared with others by */
  oil: OilLine;
  urgency: number;
  laidUp: boolean;
  overdue: number;
  dueSoon: number;
  notOnRecord: number;
  status: CarStatus;
  stop: Stop | null;
};

/** Asks the engine about a car and draws the overview's columns from what it says. */
export function answerOf({ car, requirements }: RoadAsked): Answer {
  const { book } = car;
  const analysis = analyseBook(book);
  const inUse = analysis.status === 'inUse';
  const road = inUse ? carReadiness(car, null, requirements, analysis) : null;
  const { items } = analysis;
  const count = (is: (item: (typeof items)[number]) => boolean) => items.filter(is).length;
  return {
    analysis,
    road,
    lane: laneOf(book, analysis, road),
    lines: dueLinesOf(book, analysis),
    said: saidOf(book, analysis),
    oil: oilLineOf(analysis.oil, oilYearAgo(book)),
    urgency: urgencyOf(analysis),
    laidUp: analysis.laidUp !== null,
    overdue: count((item) => item.state === 'overdue'),
    dueSoon: count((item) => item.state === 'dueSoon'),
    status: analysis.status,
    stop: stopOf(analysis.status, analysis.matters),
    notOnRecord: count((item) => item.state === 'unknown' && item.reasonCode === 'noBaseline'),
  };
}
