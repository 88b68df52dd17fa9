'use client';

import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { Controller, useForm } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, DateField, NoteField, TextField, Tick } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import { Form, FormPair } from '../forms/Form.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import { useWritten } from '../items/use-written.ts';
import styles from './DoneForm.module.css';
import { type DoneFields, readDone } from './done-fields.ts';
import { type PieceWhere, usePiece } from './use-piece.ts';

/** Says that items of a set, a tool or a person were done; it needs no car. */
export function DoneForm({ itemId, ...where }: PieceWhere & { itemId: string | null }) {
  const trpc = useTRPC();
  const { row, garage, owned } = usePiece(where);
  const form = useForm<DoneFields>({
    defaultValues: {
      items: itemId === null ? [] : [itemId],
      on: garage.today,
      time: '',
      byWhom: '',
      cost: '',
      note: '',
    },
  });
  const forget = useDraft(`gear-done:${row.gearId}:${itemId ?? ''}`, form);
  // made once: pressed again after no answer, the same entry is meant
  const [id] = useState(newId);
  const read = (fields: DoneFields) =>
    readDone(fields, { id, gearId: row.gearId, zone: garage.zone });
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, read);
  const record = useCommand(
    garage.id,
    useMutation(trpc.entry.record.mutationOptions()).mutateAsync,
  );
  const remove = useMutation(trpc.entry.remove.mutationOptions());
  const { written, toOwner } = useWritten(owned);

  async function save(fields: DoneFields) {
    const done = read(fields);
    setAsked(true);
    if ('problems' in done) return record.clear();
    const saved = await record.send({ entry: done.entry });
    if (!saved) return;
    forget();
    const undoing = {
      garageId: garage.id,
      commandId: newId(),
      entryId: id,
      baseRevision: saved.revision,
    };
    await written(saved, () => remove.mutateAsync(undoing));
  }

  const trouble = wrong ?? record.trouble;
  const errors = trouble?.fields ?? {};
  return (
    <Form
      label="Record service done"
      onSubmit={form.handleSubmit(save)}
      trouble={trouble}
      actions={
        <>
          <Button type="submit" look="main" busy={record.busy} busyWords="Saving …">
            Save
          </Button>
          <Button
            onClick={() => {
              forget();
              toOwner();
            }}
          >
            Leave without saving
          </Button>
        </>
      }
    >
      <Controller
        control={form.control}
        name="items"
        render={({ field: { value, onChange } }) => (
          <fieldset className={styles.done}>
            <legend>Done</legend>
            {row.items.length === 0 ? (
              <p>Nothing is watched on it yet. Add an item first.</p>
            ) : null}
            {row.items.map(({ id: one, item }) => (
              <Tick
                key={one}
                label={item.name}
                checked={value.includes(one)}
                onChange={(on) =>
                  onChange(on ? [...value, one] : value.filter((other) => other !== one))
                }
              />
            ))}
            {errors['entry.items'] ? (
              <p role="alert" className={styles.error}>
                {errors['entry.items']}
              </p>
            ) : null}
          </fieldset>
        )}
      />
      <p>A new label with another date changes the item: say the date there.</p>
      <FormPair>
        <DateField label="Done on" error={errors['entry.on']} {...form.register('on')} />
        <TextField
          label="By whom"
          optional
          autoComplete="off"
          error={errors['entry.byWhom']}
          {...form.register('byWhom')}
        />
      </FormPair>
      <Fold
        title="Time of day, cost and note"
        wrong={['time', 'cost', 'note'].some((name) => errors[`entry.${name}`])}
      >
        <FormPair>
          <TextField
            label="Time of day"
            optional
            type="time"
            figures
            error={errors['entry.time']}
            {...form.register('time')}
          />
          <TextField
            label="Cost"
            hint="With the currency."
            optional
            autoComplete="off"
            error={errors['entry.cost']}
            {...form.register('cost')}
          />
        </FormPair>
        <NoteField
          label="Note"
          optional
          rows={3}
          error={errors['entry.note']}
          {...form.register('note')}
        />
      </Fold>
    </Form>
  );
}
