import type { CarView, EventView, GarageView, GearRow, ItemView } from '@quartermark/api/client';
import type { CarProfile, ComponentSort } from '@quartermark/engine/log';
import type { OpenFinding, OpenIncident, WakeStep } from '@quartermark/engine/matters';

/** A component that a form can name. */
export type KnownPart = {
  id: string;
  name: string;
  sort: ComponentSort;
  on: { carId: string; name: string; positions: readonly string[] } | null;
};

/** What a form is about, and what it has to choose from. */
export type About = {
  garage: GarageView;
  /** null where it is about no car */
  carId: string | null;
  /** the component, piece of equipment or person, beside or instead of a car */
  gearId: string | null;
  name: string;
  /** of the odometer */
  unit: 'km' | 'mi';
  profile: CarProfile;
  items: readonly ItemView[];
  people: readonly string[];
  /** null where they are not at hand */
  parts: readonly KnownPart[] | null;
  events: readonly { id: string; name: string }[];
  findings: readonly OpenFinding[];
  incidents: readonly OpenIncident[];
  wakeSteps: readonly WakeStep[];
};

const NOTHING = {
  carId: null,
  gearId: null,
  profile: {},
  items: [],
  people: [],
  parts: null,
  events: [],
  findings: [],
  incidents: [],
  wakeSteps: [],
} as const;

type Beside = { gear?: readonly GearRow[] | undefined; events?: readonly EventView[] };

/** @param beside components, people and events of the garage, as far as they are at hand */
export function aboutCar(view: CarView, { gear, events = [] }: Beside = {}): About {
  const { garage, carId, car, items, people, analysis } = view;
  const matters = analysis?.matters;
  return {
    garage,
    carId,
    gearId: null,
    name: car.name,
    unit: car.unit,
    profile: car.profile,
    items,
    people,
    // those on the car come with it; that there are no others is not known
    parts: gear ? knownParts(gear) : view.gear.length > 0 ? knownParts(view.gear) : null,
    events: events.map(({ eventId, event }) => ({ id: eventId, name: event.name })),
    findings: matters?.findings ?? [],
    incidents: matters?.incidents ?? [],
    wakeSteps: matters?.wakeSteps ?? [],
  };
}

/** A form that is about a component, a piece of equipment or a person alone. */
export function aboutGear(garage: GarageView, row: GearRow): About {
  return {
    ...aboutGarage(garage),
    gearId: row.gearId,
    name: row.gear.name,
    items: row.items,
    parts: knownParts([row]),
  };
}

/** A form that is about the garage itself. */
export function aboutGarage(garage: GarageView): About {
  return {
    ...NOTHING,
    garage,
    name: garage.name,
    unit: garage.distanceUnit,
  };
}

function knownParts(rows: readonly GearRow[]): KnownPart[] {
  return rows.flatMap(({ gearId, gear, fittedTo }) =>
    gear.kind === 'component'
      ? [{ id: gearId, name: gear.name, sort: gear.sort, on: fittedTo }]
      : [],
  );
}

/** The part of that id; null where it is not known. */
export const partOf = ({ parts }: About, id: string): KnownPart | null =>
  parts?.find((part) => part.id === id) ?? null;
