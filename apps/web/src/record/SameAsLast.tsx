'use client';

import type { CarView, LastValues } from '@quartermark/api/client';
import { entryLine } from '@quartermark/engine/display';
import type { UseFormReturn } from 'react-hook-form';
import { Button } from '../components/index.ts';
import { readRecord, type Writes } from './read-record.ts';
import { emptyFields, type RecordFields, type Start } from './record-fields.ts';
import type { FormKind } from './record-kinds.ts';
import { lastAlike, sameAsLast } from './same-as-last.ts';

type SameAsLastProps = {
  form: UseFormReturn<RecordFields>;
  kind: FormKind;
  last: LastValues;
  start: Start;
  view: CarView;
  writes: Writes;
};

/** Fills the form as the last one of its kind was; the day, readings and remarks stay this one's own. */
export function SameAsLast({ form, kind, last, start, view, writes }: SameAsLastProps) {
  const alike = lastAlike(kind, last);
  if (!alike) return null;
  const same = sameAsLast(alike, start);
  const read = readRecord({ ...emptyFields(start), ...same }, writes);
  if (!('entry' in read)) return null;
  const { title, detail } = entryLine(read.entry, view.items);
  return (
    <div>
      <Button
        onClick={() => form.reset({ ...form.getValues(), ...same }, { keepDefaultValues: true })}
      >
        Same as last: {[title, detail].filter((words) => words !== '').join(', ')}
      </Button>
    </div>
  );
}
