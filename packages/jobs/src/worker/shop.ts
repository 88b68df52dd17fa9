import type { Db, RoadAsked } from '@quartermark/db';
import type { AddressPolicy } from '@quartermark/post';
import type { Logger } from 'pino';
import type { Answer } from './answer.ts';
import type { Lanes, Pace } from './lanes.ts';

/** Tells the time; passed in, so that a test can say which day it is. */
export type Clock = { now(): Date };

/** Points at which a test may stop the process. */
export type Point =
  | 'afterRead'
  | 'beforeWrite'
  | 'afterPublish'
  | 'composed'
  | 'claimed'
  | 'accepted';

/** The engine as the worker uses it. */
export type Engine = { version: number; answer(asked: RoadAsked): Answer };

/** What the worker's parts work with. */
export type Shop = {
  db: Db;
  lanes: Lanes;
  clock: Clock;
  log: Logger;
  engine: Engine;
  pace: Pace;
  /** address people open: links of letters begin with it */
  origin: string;
  /** where letters and webhooks may go */
  policy: AddressPolicy;
  reached(point: Point): Promise<void>;
};
