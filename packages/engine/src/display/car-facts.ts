import type { ItemInput, Limit } from '../log/item.ts';
import type { DistanceUnit } from '../log/units.ts';

/** What the words need to know of a car beside the analysis: names and the units things were typed in. */
export type CarFacts = {
  /** unit of the odometer */
  unit: DistanceUnit;
  items: readonly { id: string; item: ItemFacts }[];
};

export type ItemFacts = Pick<ItemInput, 'name' | 'limits' | 'severe'>;

/** The limit as it was typed, found by its measure; undefined where the item has none such. */
export function typedLimit(item: ItemFacts, measure: string, severe: boolean): Limit | undefined {
  const limits = severe ? (item.severe?.limits ?? []) : item.limits;
  return limits.find((limit) => limit.measure === measure);
}
