import type { EntryKind } from '../../log/entry.ts';
import type { Item } from '../../log/item.ts';
import type { WorkKind } from '../result.ts';

type DoneBy = {
  /** what is watched, as a name */
  name: string;
  work: WorkKind;
  /** the work, verb first; null: by the item's own name */
  what: string | null;
  /** the entry it is written down with */
  kind: EntryKind;
};

const DONE_BY: Readonly<Record<Item['role'], DoneBy>> = {
  engineOil: {
    name: 'Engine oil',
    work: 'fluids',
    what: 'Change the engine oil',
    kind: 'oilChange',
  },
  oilFilter: {
    name: 'Oil filter',
    work: 'fluids',
    what: 'Renew the oil filter',
    kind: 'oilChange',
  },
  brakeFluid: {
    name: 'Brake fluid',
    work: 'fluids',
    what: 'Renew the brake fluid',
    kind: 'service',
  },
  pads: { name: 'Brake pads', work: 'brakes', what: 'Renew the pads', kind: 'service' },
  tyres: { name: 'Tyres', work: 'tyres', what: 'Renew the tyres', kind: 'service' },
  wheelFasteners: {
    name: 'Wheel fasteners',
    work: 'torque',
    what: 'Torque the wheels by the manual, and write it down',
    kind: 'service',
  },
  other: { name: 'Other items', work: 'service', what: null, kind: 'service' },
};

/** How what an item of a role asks for is done and written down. */
export const doneBy = (role: Item['role']): DoneBy => DONE_BY[role];
