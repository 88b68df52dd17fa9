import type { CarDraft } from '@quartermark/engine/log';
import { readNumber } from '@quartermark/engine/log';

/** What the form holds: everything as typed. */
export type CarFields = {
  name: string;
  unit: 'km' | 'mi';
  odoDigits: '' | '4' | '5' | '6' | '7';
  reading: string;
  readOn: string;
  sump: '' | 'wet' | 'dry';
  induction: '' | 'natural' | 'forced';
  fuel: '' | 'petrol' | 'diesel' | 'other';
  oilSpan: string;
};

export function emptyCar(unit: 'km' | 'mi', today: string): CarFields {
  return {
    name: '',
    unit,
    odoDigits: '',
    reading: '',
    readOn: today,
    sump: '',
    induction: '',
    fuel: '',
    oilSpan: '',
  };
}

/** Why the span cannot be read, in words; undefined where it can, or where none was typed. */
export function spanProblem(typed: string): string | undefined {
  if (typed.trim() === '') return undefined;
  const read = readNumber(typed, false);
  return 'problem' in read ? read.problem : undefined;
}

/** The form's contents as the api takes them; what was left empty is left out. */
export function carDraft(fields: CarFields): CarDraft {
  const span = fields.oilSpan.trim() === '' ? null : readNumber(fields.oilSpan, false);
  return {
    name: fields.name,
    unit: fields.unit,
    ...(fields.odoDigits === '' ? {} : { odoDigits: Number(fields.odoDigits) }),
    profile: {
      ...(fields.sump === '' ? {} : { sump: fields.sump }),
      ...(fields.induction === '' ? {} : { induction: fields.induction }),
      ...(fields.fuel === '' ? {} : { fuel: fields.fuel }),
      ...(span && 'value' in span ? { oilSpanL: span.value } : {}),
    },
  };
}
