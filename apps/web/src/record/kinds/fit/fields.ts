import type { EntryOf } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import type { Start } from '../../start.ts';
import { type Members, type Reading, some, text, was } from '../../typed.ts';

type Fit = EntryOf<'fit'>;
export type FitFields = {
  component: string;
  change: Fit['change'] | '';
  positions: string[];
  condition: NonNullable<Fit['condition']> | '';
  bedding: NonNullable<Fit['bedding']> | '';
};

export const emptyFit = ({ component }: Start): FitFields => ({
  component: component ?? '',
  change: '',
  positions: [],
  condition: '',
  bedding: '',
});

export const fitFields = (entry: Fit): FitFields => ({
  component: entry.component,
  change: entry.change,
  positions: entry.positions ?? [],
  condition: entry.condition ?? '',
  bedding: entry.bedding ?? '',
});

export function readFit({ fit }: RecordFields, { base, problems }: Reading): Members {
  if (fit.component === '') problems.component = 'Choose the part.';
  if (fit.change === '') problems.change = 'Say whether it was fitted, taken off or moved.';
  // how it was put on belongs to the day on which that was
  const off = fit.change === 'off';
  const before = was('fit', base);
  return {
    component: text(fit.component),
    change: text(fit.change),
    positions: some(fit.positions),
    condition: off ? before?.condition : text(fit.condition),
    bedding: off ? before?.bedding : text(fit.bedding),
  };
}
