import type { ItemDraft, Limit } from '../log/item.ts';

export type ProposedItem<L extends readonly Limit[]> = Omit<ItemDraft, 'limits'> & { limits: L };

type ProposalCommon = {
  /** names the proposal; stays the same from version to version */
  key: string;
  /** a sentence or two for the person who decides */
  why: string;
};

/**
 * An item that could be watched. With `askManual` there is no limit in common use: the person takes it
 * from the manual or the label, and until then there is none.
 */
export type Proposal =
  | (ProposalCommon & { askManual: false; item: ProposedItem<[Limit, ...Limit[]]> })
  | (ProposalCommon & {
      askManual: true;
      /** where the value stands */
      ask: 'manual' | 'label';
      item: ProposedItem<[]>;
    });
