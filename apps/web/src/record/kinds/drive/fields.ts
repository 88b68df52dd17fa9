import type { EntryOf } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import type { Start } from '../../start.ts';
import { type Members, quantity, type TypedText, text } from '../../typed.ts';

export type DriveFields = { use: 'road' | 'touring'; distance: TypedText; until: string };

export const emptyDrive = ({ unit }: Start): DriveFields => ({
  use: 'road',
  distance: { text: '', unit },
  until: '',
});

export const driveFields = (entry: EntryOf<'drive'>, empty: DriveFields): DriveFields => ({
  use: entry.use,
  distance: entry.distance ?? empty.distance,
  until: entry.until ?? '',
});

export const readDrive = ({ drive }: RecordFields): Members => ({
  use: drive.use,
  distance: quantity(drive.distance),
  until: drive.use === 'touring' ? text(drive.until) : undefined,
});
