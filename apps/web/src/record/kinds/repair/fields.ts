import type { EntryOf } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import { type Members, type Reading, text, was } from '../../typed.ts';

export type RepairFields = { text: string; affectsOilUse: boolean };

export const emptyRepair = (): RepairFields => ({ text: '', affectsOilUse: false });

export const repairFields = (entry: EntryOf<'repair'>): RepairFields => ({
  text: entry.text,
  affectsOilUse: entry.affectsOilUse ?? false,
});

export function readRepair({ repair }: RecordFields, { base, problems }: Reading): Members {
  const said = text(repair.text);
  if (!said) problems.text = 'Say what was repaired.';
  // an outspoken "no" stays one
  const not = was('repair', base)?.affectsOilUse === false ? false : undefined;
  return { text: said, affectsOilUse: repair.affectsOilUse ? true : not };
}
