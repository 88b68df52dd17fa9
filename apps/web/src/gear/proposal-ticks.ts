import type { Proposal } from '@quartermark/engine/library';
import type { ItemDraft, Limit } from '@quartermark/engine/log';
import { type Problems, readField } from '../items/limit-fields.ts';

/** What was said of one proposal that is ticked; all of it as typed. */
export type Ticked = {
  /** the date a label says, where that is the limit */
  label: string;
  /** what its maker says, where the library has no value */
  hours: string;
  months: string;
  /** the day it was last done; '' is not on record */
  lastDone: string;
};

export const JUST_TICKED: Ticked = { label: '', hours: '', months: '', lastDone: '' };

/** By key; what is not ticked has none. */
export type Ticks = Record<string, Ticked>;

const SOURCE = { manual: 'The maker’s manual', label: 'The label' } as const;

function askedLimits(
  { key, ask }: Extract<Proposal, { askManual: true }>,
  { label, hours, months }: Ticked,
  problems: Problems,
): Limit[] {
  if (ask === 'label') {
    if (label === '')
      problems[`${key}.label`] = 'Give the date the label says, or take the tick away.';
    return [{ measure: 'date', value: label }];
  }
  const limits: Limit[] = [];
  if (hours.trim() !== '')
    limits.push({ measure: 'hours', value: readField(hours, `${key}.hours`, problems, true) });
  if (months.trim() !== '')
    limits.push({ measure: 'months', value: readField(months, `${key}.months`, problems, false) });
  if (limits.length === 0)
    problems[`${key}.hours`] = 'Give hours or months, or take the tick away.';
  return limits;
}

type Found = { key: string; item: ItemDraft };

/** The items that were ticked, in the order proposed; what is wrong is added by `KEY.field`. */
export function tickedItems(
  proposals: readonly Proposal[],
  ticks: Ticks,
  problems: Problems,
): Found[] {
  return proposals.flatMap((proposal): Found[] => {
    const ticked = ticks[proposal.key];
    if (!ticked) return [];
    const start = ticked.lastDone === '' ? {} : { baseline: { on: ticked.lastDone } };
    if (!proposal.askManual) return [{ key: proposal.key, item: { ...proposal.item, ...start } }];
    const limits = askedLimits(proposal, ticked, problems);
    const source = { source: SOURCE[proposal.ask] };
    return [{ key: proposal.key, item: { ...source, ...proposal.item, limits, ...start } }];
  });
}
