import type { EntryOf } from '@quartermark/engine/log';
import { NO_PRODUCT, type ProductFields, productFields, readProduct } from '../../product.ts';
import type { RecordFields } from '../../record-fields.ts';
import type { Start } from '../../start.ts';
import { type Members, quantity, type Reading, type TypedText, was } from '../../typed.ts';
import { levelOf, type ZoneField, zoneOf } from '../../zones.ts';
import { noOil } from '../oil-top-up/fields.ts';

export type OilChangeFields = ProductFields & {
  filled: TypedText;
  drained: TypedText;
  filter: '' | 'renewed' | 'kept';
  after: ZoneField;
};

export const emptyOilChange = (start: Start): OilChangeFields => ({
  filled: noOil(start),
  drained: noOil(start),
  filter: '',
  after: '',
  ...NO_PRODUCT,
});

export const oilChangeFields = (
  entry: EntryOf<'oilChange'>,
  empty: OilChangeFields,
): OilChangeFields => ({
  filled: entry.filled ?? empty.filled,
  drained: entry.drained ?? empty.drained,
  filter: entry.filterRenewed ? 'renewed' : 'kept',
  after: zoneOf(entry.levelAfter),
  ...productFields(entry),
});

export function readOilChange(
  { oilChange: fields }: RecordFields,
  { base, problems }: Reading,
): Members {
  if (fields.filter === '')
    problems.filterRenewed = 'Say whether the filter was renewed: its own count goes by that.';
  return {
    filled: quantity(fields.filled),
    drained: quantity(fields.drained),
    filterRenewed: fields.filter === 'renewed',
    levelAfter: levelOf(fields.after, was('oilChange', base)?.levelAfter),
    ...readProduct(fields),
  };
}
