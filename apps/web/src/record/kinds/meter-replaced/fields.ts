import type { EntryOf } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import type { Start } from '../../start.ts';
import { type Members, quantity, type Reading, type TypedText } from '../../typed.ts';

type Scale = { oldLast: TypedText; newFirst: TypedText };
export type MeterReplacedFields = { meter: 'odometer' | 'hours' } & Record<
  'odometer' | 'hours',
  Scale
>;

const scale = (unit: string): Scale => ({
  oldLast: { text: '', unit },
  newFirst: { text: '', unit },
});

export const emptyMeterReplaced = ({ unit }: Start): MeterReplacedFields => ({
  meter: 'odometer',
  odometer: scale(unit),
  hours: scale('h'),
});

export function meterReplacedFields(
  { meter, oldLast, newFirst }: EntryOf<'meterReplaced'>,
  empty: MeterReplacedFields,
): MeterReplacedFields {
  return { ...empty, meter, [meter]: { oldLast: oldLast ?? empty[meter].oldLast, newFirst } };
}

export function readMeterReplaced(
  { meterReplaced: fields }: RecordFields,
  { problems }: Reading,
): Members {
  const { oldLast, newFirst } = fields[fields.meter];
  if (!quantity(newFirst)) problems['newFirst.text'] = 'Write what the new one shows first.';
  return { meter: fields.meter, oldLast: quantity(oldLast), newFirst };
}
