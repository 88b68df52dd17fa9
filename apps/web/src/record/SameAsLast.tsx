'use client';

import type { LastValues } from '@quartermark/api/client';
import { entryLine } from '@quartermark/engine/display';
import type { EntryKind } from '@quartermark/engine/log';
import type { UseFormReturn } from 'react-hook-form';
import { Button } from '../components/index.ts';
import type { About } from './about.ts';
import { readRecord, type Writes } from './read-record.ts';
import { emptyFields, type RecordFields } from './record-fields.ts';
import { lastAlike, sameAsLast } from './same-as-last.ts';
import type { Start } from './start.ts';

type SameAsLastProps = {
  form: UseFormReturn<RecordFields>;
  kind: EntryKind;
  last: LastValues;
  start: Start;
  about: About;
  writes: Writes;
};

/** Fills the form as the last one of its kind was; the day, readings and remarks stay this one's own. */
export function SameAsLast({ form, kind, last, start, about, writes }: SameAsLastProps) {
  const alike = lastAlike(kind, last);
  if (!alike) return null;
  const same = sameAsLast(alike, start);
  const read = readRecord({ ...emptyFields(start), ...same }, writes);
  if (!('entry' in read)) return null;
  const { title, detail } = entryLine(read.entry, about.items);
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
