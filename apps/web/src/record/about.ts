import type { CarView, EventView, GarageView, GearRow, ItemView } from '@quartermark/api/client';
import type { OpenFinding, OpenIncident, WakeStep } from '@quartermark/engine';
import type { CarProfile, ComponentSort } from '@quartermark/engine/log';

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
  parts: readonly KnownPart[];
  events: readonly { id: string; name: string }[];
  findings: readonly OpenFinding[];
  incidents: readonly OpenIncident[];
  wakeSteps: readonly WakeStep[];
};

type Beside = { gear?: readonly GearRow[]; events?: readonly EventView[] };

/**
 * @param beside components and events of the garage, as far as they are at hand; those that are on the
 *   car come with it
 */
export function aboutCar(view: CarView, { gear = view.gear, events = [] }: Beside = {}): About {
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
    parts: knownParts(gear),
    events: events.map(({ eventId, event }) => ({ id: eventId, name: event.name })),
    findings: matters?.findings ?? [],
    incidents: matters?.incidents ?? [],
    wakeSteps: matters?.wakeSteps ?? [],
  };
}

/** A form that is about a component, a piece of equipment or a person alone. */
export function aboutGear(garage: GarageView, row: GearRow): About {
  return {
    garage,
    carId: null,
    gearId: row.gearId,
    name: row.gear.name,
    unit: garage.distanceUnit,
    profile: {},
    items: row.items,
    people: [],
    parts: knownParts([row]),
    events: [],
    findings: [],
    incidents: [],
    wakeSteps: [],
  };
}

function knownParts(rows: readonly GearRow[]): KnownPart[] {
  return rows.flatMap(({ gearId, gear, fittedTo }) =>
    gear.kind === 'component'
      ? [{ id: gearId, name: gear.name, sort: gear.sort, on: fittedTo }]
      : [],
  );
}
