import type { EntryOf } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import { type Members, number, type Reading, text, typed } from '../../typed.ts';

export type InspectionFields = {
  purpose: string;
  result: EntryOf<'inspection'>['result'] | '';
  byWhom: string;
  sticker: string;
  noiseDb: string;
  validTo: string;
};

export const emptyInspection = (): InspectionFields => ({
  purpose: '',
  result: '',
  byWhom: '',
  sticker: '',
  noiseDb: '',
  validTo: '',
});

export const inspectionFields = (entry: EntryOf<'inspection'>): InspectionFields => ({
  purpose: entry.purpose,
  result: entry.result,
  byWhom: entry.byWhom ?? '',
  sticker: entry.sticker ?? '',
  noiseDb: typed(entry.noiseDb),
  validTo: entry.validTo ?? '',
});

export function readInspection({ inspection }: RecordFields, { problems }: Reading): Members {
  const purpose = text(inspection.purpose);
  if (!purpose) problems.purpose = 'Choose what it was for, or write it.';
  if (inspection.result === '') problems.result = 'Say how it went.';
  return {
    purpose,
    result: text(inspection.result),
    byWhom: text(inspection.byWhom),
    sticker: text(inspection.sticker),
    noiseDb: number(inspection.noiseDb, 'noiseDb', problems),
    validTo: text(inspection.validTo),
  };
}
