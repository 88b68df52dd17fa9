import type { CarProfile, EventSort, ReadyFor, Requirements } from '@quartermark/engine/log';
import type {
  CarReadiness,
  InspectorFacts,
  ProposedUse,
  TakeAlong,
  WorkLine,
} from '@quartermark/engine/readiness';
import type { EntryView, EventView, GarageView, ItemView } from './views.ts';

export type { TakeAlong };

/** What the pages of an event read. Instants are ISO strings in UTC, days are civil dates of the garage. */

/** Everything about one event, worked out when asked, as of one moment. */
export type EventPage = {
  /** the server's clock when it was worked out, an ISO instant */
  at: string;
  garage: GarageView;
  event: EventView;
  requirements: {
    /** the event's own; null: the garage's hold */
    own: Requirements | null;
    /** the garage's for its sort; null: the usual ones hold */
    garage: Requirements | null;
    usual: Requirements;
  };
  /** cars that go and are still in the garage, in the order of the event */
  cars: EventCar[];
  work: WorkLine[];
  /** all of them, oldest first: the last of a line decides */
  ticks: TickView[];
  /** everybody of the garage, by name */
  people: { gearId: string; name: string }[];
  /** what its first car may do there; null where the event says it, or where nothing is usual */
  proposal: ProposedUse | null;
  /** names of cars, people, items and parts, by id */
  names: Record<string, string>;
  /** the last event of the same sort that is over */
  former: EventView | null;
};

export type EventCar = {
  carId: string;
  name: string;
  unit: 'km' | 'mi';
  /** what the cautions of the work depend on */
  profile: CarProfile;
  /** null: its book cannot be read */
  readiness: CarReadiness | null;
  /** what to take along; null where its book cannot be read */
  take: TakeAlong | null;
  /** what an inspector asks: `inspectorFacts()`; null where its book cannot be read */
  facts: InspectorFacts | null;
  /** uses on record that belong to the event */
  recorded: EntryView[];
  items: ItemView[];
};

/** `proposal` null: nothing is usual at events of the sort. */
export type ProposalView = { sort: EventSort; proposal: ProposedUse | null };

/** Somebody said that a line of work is done, or that it is not after all. */
export type TickView = {
  tickId: string;
  carId: string | null;
  /** id of the line of work */
  line: string;
  done: boolean;
  /** who, by name */
  by: string;
  /** when it arrived, and when it was made on the device */
  at: string;
  madeAt: string;
};

/** Events that are over, the newest first. */
export type FormerEvents = { events: EventView[] };

/**
 * `revision` 0: the garage never had its own. After it went back to the usual ones it goes on counting,
 * so that nobody overwrites what he has not seen.
 */
export type RequirementsRow = {
  use: ReadyFor;
  requirements: Requirements;
  usual: boolean;
  revision: number;
};

/** The road, then each sort of event. */
export type RequirementsList = { garage: GarageView; rows: RequirementsRow[] };
