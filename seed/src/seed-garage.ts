import type {
  CarDraft,
  EntryDraft,
  EventDraft,
  GearDraft,
  ItemDraft,
  OrderDraft,
  PlannedLayUp,
  SpecSheet,
} from '@quartermark/engine/log';

/** An invented garage as plain data: what a person would have typed, in the order it was typed. */
export type SeedGarage = {
  garage: {
    name: string;
    zone: string;
    distanceUnit: 'km' | 'mi';
    volumeUnit: 'l' | 'usQt' | 'impQt';
    hemisphere: 'N' | 'S';
  };
  cars: SeedCar[];
  gear: SeedGear[];
  /** entries about gear, each with its own car or none, in the order in which they were recorded */
  gearEntries: SeedStep[];
  events: { id: string; event: EventDraft }[];
  plannedLayUps: { id: string; carId: string; layUp: PlannedLayUp }[];
  orders: { id: string; itemId: string; order: OrderDraft }[];
  specs: { carId: string; sheet: SpecSheet }[];
};

/** A component, a piece of equipment or a person, with its items. */
export type SeedGear = {
  /** short name by which `expected.json` speaks of it */
  key: string;
  id: string;
  gear: GearDraft;
  items: { id: string; item: ItemDraft }[];
};

export type SeedCar = {
  /** short name by which `expected.json` speaks of the car */
  key: string;
  id: string;
  car: CarDraft;
  items: { id: string; item: ItemDraft }[];
  /** in the order in which they were recorded */
  entries: SeedStep[];
};

/** A new entry, an amendment of an earlier one (same id), or its removal. */
export type SeedStep =
  | { entry: EntryDraft }
  | { amend: string; entry: EntryDraft }
  | { remove: string };
