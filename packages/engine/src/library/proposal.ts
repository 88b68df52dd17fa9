import type { CarProfile } from '../log/book.ts';
import type { ItemDraft, Limit, UseClass } from '../log/item.ts';
import type { DistanceUnit } from '../log/units.ts';

export type ProposedItem<L extends readonly Limit[]> = Omit<ItemDraft, 'limits'> & { limits: L };

type ProposalCommon = {
  /** names the proposal; stays the same from version to version */
  key: string;
  /** a sentence or two for the person who decides */
  why: string;
};

/**
 * An item that could be watched. With `askManual` there is no value in common use: the person takes it
 * from the manual or the label, and until then the item has no limit.
 */
export type Proposal =
  | (ProposalCommon & { askManual: false; item: ProposedItem<[Limit, ...Limit[]]> })
  | (ProposalCommon & {
      askManual: true;
      /** where the value stands */
      ask: 'manual' | 'label';
      item: ProposedItem<[]>;
    });

/** What a car is and how it is used, as the proposals ask for it. */
export type Wanted = {
  profile: CarProfile;
  unit: DistanceUnit;
  does(use: UseClass): boolean;
};

export const COMMON = 'common practice, no source';

type Told = Omit<ItemDraft, 'limits'>;

/** A proposal with limits in common use. */
export function propose(
  key: string,
  item: Told,
  limits: [Limit, ...Limit[]],
  why: string,
): Proposal {
  return { key, askManual: false, item: { source: COMMON, ...item, limits }, why };
}

/** A proposal whose limit only the manual, or a label, can give. */
export function askFor(
  key: string,
  item: Told,
  why: string,
  ask: 'manual' | 'label' = 'manual',
): Proposal {
  return { key, askManual: true, ask, item: { ...item, limits: [] }, why };
}
