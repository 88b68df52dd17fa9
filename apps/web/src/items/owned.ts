import type { CarView, GarageView, ItemView, OrderView } from '@quartermark/api/client';
import type { Flag, ItemResult } from '@quartermark/engine';
import { momentWords } from '../garage/moment-words.ts';

/** What items belong to, as the commands name it. */
export type Owner = { carId: string } | { gearId: string };

/** Something that owns items, as the list, the reasons and the forms of items need it. */
export type Owned = {
  owner: Owner;
  garage: GarageView;
  name: string;
  /** in which distances are told and typed */
  unit: 'km' | 'mi';
  /** address of its own page; its items' pages lie below */
  href: string;
  /** address of the form that says an item was done */
  doneHref: string;
  items: ItemView[];
  /** parts ordered for them */
  orders: OrderView[];
  /** null: being worked out */
  analysis: { items: ItemResult[]; flags: Flag[]; asOf: string } | null;
  laidUp: boolean;
  /** in a lay-up of which nobody said when it ends */
  openLayUp: boolean;
  /** its figures could not be worked out */
  failed: boolean;
  /** when and by what its figures were worked out */
  computed: string;
};

export function ownerId(owner: Owner): string {
  return 'carId' in owner ? owner.carId : owner.gearId;
}

export function ownedByCar(view: CarView): Owned {
  const { garage, carId, car, items, orders, analysis, failure } = view;
  return {
    owner: { carId },
    garage,
    name: car.name,
    unit: car.unit,
    href: `/g/${garage.id}/car/${carId}`,
    doneHref: `/g/${garage.id}/record/${carId}/service`,
    items,
    orders,
    analysis,
    laidUp: analysis !== null && analysis.laidUp !== null,
    openLayUp: analysis?.laidUp?.until === null,
    failed: failure !== null,
    computed: computedWords(view),
  };
}

function computedWords({ computedAt, engineVersion, version, garage }: CarView): string {
  if (computedAt === null) return 'Not worked out yet.';
  return `Worked out on ${momentWords(computedAt, garage.zone)}, from state ${version} of this car’s log, by version ${engineVersion ?? 'unknown'} of the reckoning.`;
}
