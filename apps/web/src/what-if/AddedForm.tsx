'use client';

import type { AddedUse } from '@quartermark/engine/what-if';
import { useState } from 'react';
import { useFieldArray, useForm, useWatch } from 'react-hook-form';
import { Button, Notice, useToast } from '../components/index.ts';
import { Form } from '../forms/Form.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import { AddedLineParts } from './AddedLineParts.tsx';
import styles from './AddedLines.module.css';
import { writeLines } from './added-address.ts';
import { type AddedFields, emptyLine, LINES_MAX, lineOf, readLines } from './added-fields.ts';

type AddedFormProps = {
  carId: string;
  unit: 'km' | 'mi';
  /** civil date of the garage */
  today: string;
  /** what the answer speaks of now */
  asked: readonly AddedUse[];
  /** lines of the address; some of them may lie in the past by now */
  first: readonly AddedUse[];
  busy: boolean;
  onAsk: (added: AddedUse[]) => void;
};

/** What the car might do, line by line; nothing of it is saved. */
export function AddedForm({ carId, unit, today, asked, first, busy, onAsk }: AddedFormProps) {
  const lines = first.length > 0 ? first.map((line) => lineOf(line, unit)) : [emptyLine(unit)];
  const form = useForm<AddedFields>({ defaultValues: { lines } });
  const address = writeLines(asked);
  const forget = useDraft(`what-if:${carId}:${address}`, form);
  // lines of an old address may be wrong from the start
  const [tried, setTried] = useState(first.length > 0);
  const read = (fields: AddedFields) => readLines(fields, today);
  const wrong = useLocalTrouble(form, tried, read);
  const { fields, append, remove, insert } = useFieldArray({
    control: form.control,
    name: 'lines',
  });
  const now = useWatch({ control: form.control, name: 'lines' });
  const toast = useToast();

  function ask(fields: AddedFields) {
    setTried(true);
    const found = read(fields);
    if ('problems' in found) return;
    if (writeLines(found.added) !== address) forget();
    onAsk(found.added);
  }

  function takeAway(at: number) {
    const gone = form.getValues(`lines.${at}`);
    remove(at);
    toast({
      id: 'line-away',
      words: `Line ${at + 1} is taken away.`,
      undo: { run: () => insert(at, gone) },
    });
  }

  const count = Object.keys(wrong?.fields ?? {}).length;
  return (
    <Form
      label="What the car might do"
      onSubmit={form.handleSubmit(ask)}
      trouble={null}
      actions={
        <>
          <Button type="submit" look="main" busy={busy} busyWords="Working it out …">
            See what changes
          </Button>
          <Button
            onClick={() => append(emptyLine(unit), { focusName: `lines.${fields.length}.start` })}
            reason={fields.length >= LINES_MAX ? `At most ${LINES_MAX} lines at once.` : null}
          >
            Add a line
          </Button>
        </>
      }
    >
      <div>
        {fields.map((field, at) => (
          <AddedLineParts
            key={field.id}
            form={form}
            at={at}
            line={now[at] ?? field}
            today={today}
            errors={wrong?.fields ?? {}}
            onRemove={fields.length > 1 ? () => takeAway(at) : undefined}
          />
        ))}
        <p className={styles.foot}>
          Amounts are for all days of a line together; what stands there at first is usual (common
          practice, no source). Each line counts as certain.
        </p>
      </div>
      {count > 0 ? (
        <Notice tone="alarm">
          {count === 1 ? 'One field needs a change' : `${count} fields need a change`} before this
          can be worked out; it is marked above.
        </Notice>
      ) : null}
    </Form>
  );
}
