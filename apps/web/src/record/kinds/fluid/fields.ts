import type { EntryOf } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import type { Start } from '../../start.ts';
import { type Members, quantity, type Reading, type TypedText, text } from '../../typed.ts';

export type FluidFields = { which: string; levelText: string; added: TypedText };

export const emptyFluid = ({ volumeUnit }: Start): FluidFields => ({
  which: '',
  levelText: '',
  added: { text: '', unit: volumeUnit },
});

export const fluidFields = (entry: EntryOf<'fluid'>, empty: FluidFields): FluidFields => ({
  which: entry.which,
  levelText: entry.levelText ?? '',
  added: entry.added ?? empty.added,
});

export function readFluid({ fluid }: RecordFields, { problems }: Reading): Members {
  const which = text(fluid.which);
  if (!which) problems.which = 'Choose the fluid, or write its name.';
  return { which, levelText: text(fluid.levelText), added: quantity(fluid.added) };
}
