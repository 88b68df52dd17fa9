import type { GarageView, GearRow } from '@quartermark/api/client';
import type { Owned } from '../items/owned.ts';

/** Its figures are worked out as they are asked for, so they are never behind. */
export function ownedByGear(garage: GarageView, row: GearRow): Owned {
  const { gearId, gear, items, orders, analysis } = row;
  const href = `/g/${garage.id}/gear/${gearId}`;
  return {
    owner: { gearId },
    garage,
    name: gear.name,
    unit: garage.distanceUnit,
    href,
    doneHref: `${href}/done`,
    items,
    orders,
    analysis,
    laidUp: false,
    openLayUp: false,
    failed: analysis === null,
    computed: analysis
      ? `Worked out as this page was asked for, by version ${analysis.engineVersion} of the reckoning.`
      : 'Not worked out: a log it rests on could not be read.',
  };
}
