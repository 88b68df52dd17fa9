import type { EntryOf } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import { type Members, quantity, type Reading } from '../../typed.ts';

export type OdometerFields = { hourMeter: string };

export const emptyOdometer = (): OdometerFields => ({ hourMeter: '' });

export const odometerFields = (entry: EntryOf<'odometer'>): OdometerFields => ({
  hourMeter: entry.hourMeter?.text ?? '',
});

export function readOdometer({ odometer, reading }: RecordFields, { problems }: Reading): Members {
  if (!quantity(odometer)) problems['odometer.text'] = 'Write what the odometer shows.';
  return { hourMeter: quantity({ text: reading.hourMeter, unit: 'h' }) };
}
