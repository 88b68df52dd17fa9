import type { CalendarEvent, DueRow, OilRow } from '@quartermark/db';
import type { Analysis, OilStory } from '@quartermark/engine';
import type { DueListCounts, Lane, UrgentFact } from '@quartermark/engine/display';
import type { ComponentLife, GearAnalysis } from '@quartermark/engine/gear';
import type {
  CarInput,
  EntryInput,
  GearInput,
  ItemInput,
  LayUpWindow,
  OrderInput,
  PlannedLayUp,
  SpecSheet,
} from '@quartermark/engine/log';
import type { OpenFinding, OpenIncident } from '@quartermark/engine/matters';
import type { CarReadiness, Verdict } from '@quartermark/engine/readiness';
import type { JudgedLine } from '@quartermark/engine/said';
import type { Outlook, WhatIf } from '@quartermark/engine/what-if';
import type { EventPage } from './event-views.ts';

/** What the screens read. Instants are ISO strings in UTC, days are civil dates of the garage. */

export type GarageView = {
  id: string;
  name: string;
  zone: string;
  hemisphere: 'N' | 'S' | null;
  distanceUnit: 'km' | 'mi';
  volumeUnit: 'l' | 'usQt' | 'impQt';
  demo: boolean;
  /** today in the garage's zone */
  today: string;
  revision: number;
};

export type FailureView = { since: string; attempts: number; cause: string };

export type OverviewRow = {
  carId: string;
  name: string;
  unit: 'km' | 'mi';
  /** null: no readable snapshot yet, it is being recomputed */
  lane: Lane | null;
  laidUp: boolean;
  overdue: number;
  dueSoon: number;
  notOnRecord: number;
  /** input version the snapshot rests on (0 without one) and the version wanted */
  version: number;
  wantedVersion: number;
  asOf: string | null;
  computedAt: string | null;
  failure: FailureView | null;
};

export type OverviewPage = {
  garage: GarageView;
  rows: OverviewRow[];
  /** pass as `cursor` for the next page; null on the last */
  next: string | null;
  /** counts over the whole garage, not the page */
  cars: number;
  needsAHand: number;
  /** of the cars in use of which it is known, those that are ready for the road */
  road: { ready: number; known: number };
};

/** A car of which everybody who may use it has to know something at once. */
export type UrgentCar = UrgentFact & { carId: string; name: string };

export type ItemView = { id: string; revision: number; position: number; item: ItemInput };

/** Parts that were ordered for an item. */
export type OrderView = { orderId: string; itemId: string; order: OrderInput; revision: number };

/** A lay-up that is meant to come; those that happened are `LayUpWindow`s. */
export type PlannedLayUpView = {
  layUpId: string;
  carId: string;
  layUp: PlannedLayUp;
  revision: number;
};

export type CarView = {
  garage: GarageView;
  carId: string;
  car: CarInput;
  revision: number;
  items: ItemView[];
  layUps: LayUpWindow[];
  /** planned ones that have not ended more than 30 days ago, by their first day */
  plannedLayUps: PlannedLayUpView[];
  /** of all its items */
  orders: OrderView[];
  version: number;
  wantedVersion: number;
  computedAt: string | null;
  engineVersion: number | null;
  /** null: being recomputed */
  analysis: Analysis | null;
  /**
   * for the road, on the day of the analysis; null: not in use, or being recomputed. On a phone's sheet
   * without the needs that are met
   */
  road: CarReadiness | null;
  failure: FailureView | null;
  /** components that are on it now */
  gear: GearRow[];
  /** who drives it, the last one first, then who else belongs to the garage; at most 30 */
  people: string[];
};

/** A component, a piece of equipment or a person, with what is known of it now. */
export type GearRow = {
  gearId: string;
  gear: GearInput;
  revision: number;
  items: ItemView[];
  /** of all its items */
  orders: OrderView[];
  /** worked out when asked; null where a book it rests on cannot be read */
  analysis: GearAnalysis['analysis'] | null;
  /** components alone */
  life: ComponentLife | null;
  /** where a component is now */
  fittedTo: { carId: string; name: string; positions: readonly string[]; since: string } | null;
};

export type GearList = {
  garage: GarageView;
  rows: GearRow[];
  /** names of the cars that are spoken of */
  cars: Record<string, string>;
};
export type GearView = { garage: GarageView; row: GearRow; cars: Record<string, string> };

export type EventView = CalendarEvent;
export type EventList = {
  garage: GarageView;
  events: EventView[];
  /** planned ones that have not ended more than 30 days ago, by their first day */
  plannedLayUps: PlannedLayUpView[];
  /** names of the cars that are spoken of */
  cars: Record<string, string>;
  /** everybody of the garage, by name */
  people: { gearId: string; name: string }[];
};

/** Events that ended in the last 60 days, with the cars they named of which nothing is on record; the last first. */
export type UnrecordedEvents = {
  garage: GarageView;
  events: (EventView & { cars: { carId: string; name: string }[] })[];
};

/** One item of a car, as the list of the whole garage holds it. `laneItemWords()` has its words. */
export type DueLineView = DueRow;

export type DueList = {
  garage: GarageView;
  /** by day: lines of cars in use first, then those of cars that are not (`status`) */
  rows: DueLineView[];
  next: string | null;
  /** over the whole garage, or over the one car asked for; whatever else the filter says */
  counts: DueListCounts;
};

/** What was said of a car's items, and what came of it. */
export type SaidCar = {
  carId: string;
  name: string;
  /** names of the items, by id */
  items: Record<string, string>;
  /** of each interval what was said first, by how far ahead; null: its log cannot be read */
  lines: JudgedLine[] | null;
};

export type SaidPage = {
  garage: GarageView;
  /** by name */
  cars: SaidCar[];
  next: string | null;
  /** cars of the whole garage, or the one asked for */
  total: number;
};

/** What would become of a car's dates with something added; nothing of it is kept. */
export type WhatIfView = {
  garage: GarageView;
  carId: string;
  name: string;
  unit: 'km' | 'mi';
  /** null: a part of its log cannot be read */
  answer: WhatIf | null;
};

/** What the next events of a car mean for it, by their first day; at most three. */
export type AtEventsView = {
  garage: GarageView;
  carId: string;
  name: string;
  /**
   * null: a part of its log cannot be read. `withUse` false: what it does there was not said. `verdict` null: the
   * event is too far away to tell
   */
  outlooks: (Outlook & { withUse: boolean; verdict: Verdict | null })[] | null;
};

/** `revision` 0: there is no sheet yet. */
export type SpecView = { sheet: SpecSheet; revision: number };

export type EntryView = {
  entry: EntryInput;
  revision: number;
  removed: boolean;
  recorded: number;
  recordedAt: string;
  recordedBy: string;
};

export type HistoryPage = {
  entries: EntryView[];
  /** names of the cars, pieces, people and items that the entries speak of, by id */
  names: Record<string, string>;
  next: string | null;
};

export type RevisionView = {
  revision: number;
  /** null: this revision removed the entry */
  body: EntryInput | null;
  at: string;
  by: string;
};

/** What the forms start from: the last values of a car. */
export type LastValues = {
  odometer: { text: string; unit: 'km' | 'mi'; on: string } | null;
  oilTopUp: EntryInput | null;
  session: EntryInput | null;
  strip: EntryInput | null;
  drive: EntryInput | null;
  fuel: EntryInput | null;
  oilCheck: EntryInput | null;
  /** the last that gives a torque */
  wheels: EntryInput | null;
  fit: EntryInput | null;
  measure: EntryInput | null;
  /** the last that says where */
  finding: EntryInput | null;
};

/** A car in the comparison of the garage's oil. */
export type OilComparedRow = OilRow;

/** The cars by their oil: those that got worse the most surely first, then by what they use. */
export type OilComparedPage = {
  garage: GarageView;
  rows: OilComparedRow[];
  next: string | null;
  /** in the whole garage, sold ones too */
  cars: number;
};

/** The past of a car's oil, worked out when asked. `story` null: a stored part of its book cannot be read. */
export type OilPastView = {
  garage: GarageView;
  carId: string;
  name: string;
  unit: 'km' | 'mi';
  story: OilStory | null;
};

/** A finding or an incident that nobody has answered, and whose it is. */
export type OpenMatter = {
  carId: string | null;
  carName: string | null;
  gearId: string | null;
  gearName: string | null;
} & ({ kind: 'finding'; matter: OpenFinding } | { kind: 'incident'; matter: OpenIncident });

/** The worst first. */
export type OpenMatters = { garage: GarageView; rows: OpenMatter[] };

/** Everything a phone needs to record without signal. */
export type PocketSheet = {
  /** the server's clock when it was written, an ISO instant */
  at: string;
  garages: {
    garage: GarageView;
    /** at most 60, the one with the newest entry first */
    cars: { view: CarView; last: LastValues }[];
    gear: GearRow[];
    events: EventView[];
    /**
     * events that run today or start within 14 days, by their first day; at most 4. Without what is
     * met, the items, the uses on record, the proposal and the former event
     */
    days: EventPage[];
  }[];
};

/** Answer of every verb that writes. `version` is the car's input version it produced. */
export type Written = { id: string; revision: number; version: number };

export type LiveEvent =
  | { kind: 'car'; carId: string; version: number }
  /** sets, tools, people, events, spec sheets, or entries of the garage itself */
  | { kind: 'garage' }
  /** the line was down: fetch anew whatever is shown */
  | { kind: 'resync' };
