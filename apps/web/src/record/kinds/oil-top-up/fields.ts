import type { EntryOf } from '@quartermark/engine/log';
import { NO_PRODUCT, type ProductFields, productFields, readProduct } from '../../product.ts';
import type { RecordFields } from '../../record-fields.ts';
import type { Start } from '../../start.ts';
import { type Members, quantity, type Reading, type TypedText, was, yes } from '../../typed.ts';
import { levelOf, type ZoneField, zoneOf } from '../../zones.ts';

export type OilTopUpFields = ProductFields & {
  volume: TypedText;
  toMax: boolean;
  before: ZoneField;
  after: ZoneField;
};

/** No amount of oil, in the unit that was last poured in. */
export function noOil({ last, volumeUnit }: Start): TypedText {
  const topUp = last?.oilTopUp?.kind === 'oilTopUp' ? last.oilTopUp : null;
  return { text: '', unit: topUp?.volume?.unit ?? volumeUnit };
}

export const emptyOilTopUp = (start: Start): OilTopUpFields => ({
  volume: noOil(start),
  toMax: false,
  before: '',
  after: '',
  ...NO_PRODUCT,
});

export const oilTopUpFields = (
  entry: EntryOf<'oilTopUp'>,
  empty: OilTopUpFields,
): OilTopUpFields => ({
  volume: entry.volume ?? empty.volume,
  toMax: entry.toMax ?? false,
  before: zoneOf(entry.levelBefore),
  after: zoneOf(entry.levelAfter),
  ...productFields(entry),
});

export function readOilTopUp(
  { oilTopUp: fields }: RecordFields,
  { base, problems }: Reading,
): Members {
  const before = was('oilTopUp', base);
  const volume = quantity(fields.volume);
  const toMax = yes(fields.toMax);
  if (!volume && !toMax)
    problems['volume.text'] =
      'Choose a bottle, write the amount, or say that it was filled to MAX.';
  return {
    volume,
    toMax,
    levelBefore: levelOf(fields.before, before?.levelBefore),
    levelAfter: levelOf(fields.after, before?.levelAfter),
    ...readProduct(fields),
  };
}
