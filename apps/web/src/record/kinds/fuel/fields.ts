import type { EntryOf } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import type { Start } from '../../start.ts';
import {
  type Members,
  number,
  quantity,
  type Reading,
  type TypedText,
  text,
  typed,
  yes,
} from '../../typed.ts';

export type FuelFields = { volume: TypedText; full: boolean; octane: string; price: string };

const FUEL_UNIT = { l: 'l', usQt: 'usGal', impQt: 'impGal' } as const;

export function emptyFuel({ last, volumeUnit }: Start): FuelFields {
  const before = last?.fuel?.kind === 'fuel' ? last.fuel : null;
  const unit = before?.volume.unit ?? FUEL_UNIT[volumeUnit];
  return { volume: { text: '', unit }, full: false, octane: '', price: '' };
}

export function fuelFields({ volume, full, octane, price }: EntryOf<'fuel'>): FuelFields {
  return { volume, full: full ?? false, octane: typed(octane), price: price ?? '' };
}

export function readFuel({ fuel }: RecordFields, { problems }: Reading): Members {
  if (!quantity(fuel.volume)) problems['volume.text'] = 'Write how much went in, such as 41.20.';
  return {
    volume: fuel.volume,
    full: yes(fuel.full),
    octane: number(fuel.octane, 'octane', problems),
    price: text(fuel.price),
  };
}
