import type { EntryOf } from '@quartermark/engine/log';
import { ALL_CORNERS, type Corner } from '../../corners.ts';
import type { RecordFields } from '../../record-fields.ts';
import { type Start, usualUnits } from '../../start.ts';
import {
  type Members,
  quantity,
  type Reading,
  type TypedText,
  text,
  was,
  yes,
} from '../../typed.ts';

export type WheelsFields = {
  change: EntryOf<'wheels'>['change'] | '';
  which: Corner[];
  torque: TypedText;
  cold: boolean;
};

export const emptyWheels = (start: Start): WheelsFields => ({
  change: '',
  which: [...ALL_CORNERS],
  torque: { text: '', unit: usualUnits(start).torque },
  cold: false,
});

export const wheelsFields = (entry: EntryOf<'wheels'>, empty: WheelsFields): WheelsFields => ({
  change: entry.change,
  which: entry.which ?? empty.which,
  torque: entry.torque ?? empty.torque,
  cold: entry.cold ?? false,
});

export function readWheels({ wheels }: RecordFields, { base, problems }: Reading): Members {
  if (wheels.change === '') problems.change = 'Say what was done to the wheels.';
  if (wheels.which.length === 0) problems.which = 'Tick at least one wheel.';
  const off = wheels.change === 'off';
  // all four need not be named
  const before = was('wheels', base);
  const all = wheels.which.length === ALL_CORNERS.length && !before?.which;
  return {
    change: text(wheels.change),
    which: all ? undefined : wheels.which,
    torque: off ? before?.torque : quantity(wheels.torque),
    cold: off ? before?.cold : yes(wheels.cold),
  };
}
