'use client';

import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button } from '../components/index.ts';
import { Form } from '../forms/Form.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import { ItemParts } from './ItemParts.tsx';
import { emptyItem, type ItemFields, readItem } from './item-fields.ts';
import { type Owned, ownerId } from './owned.ts';
import { useWritten } from './use-written.ts';

/** Puts the next item of a car or a piece of gear under watch. */
export function AddItemForm({ owned }: { owned: Owned }) {
  const trpc = useTRPC();
  const { unit, garage, owner } = owned;
  const garageId = garage.id;
  const form = useForm<ItemFields>({ defaultValues: emptyItem(unit) });
  const forget = useDraft(`item-add:${ownerId(owner)}`, form);
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, readItem);
  const add = useCommand(garageId, useMutation(trpc.item.add.mutationOptions()).mutateAsync);
  const remove = useMutation(trpc.item.remove.mutationOptions());
  const { written, toOwner } = useWritten(owned);
  // made once: pressed again after no answer, the same item is meant
  const [itemId] = useState(newId);

  async function save(fields: ItemFields) {
    const read = readItem(fields);
    setAsked(true);
    if ('problems' in read) return add.clear();
    const saved = await add.send({ ...owner, itemId, item: read.item });
    if (!saved) return;
    forget();
    const undoing = {
      garageId,
      commandId: newId(),
      itemId: saved.id,
      baseRevision: saved.revision,
    };
    await written(saved, () => remove.mutateAsync(undoing));
  }

  const trouble = wrong ?? add.trouble;
  return (
    <Form
      label="Add an item"
      onSubmit={form.handleSubmit(save)}
      trouble={trouble}
      actions={
        <>
          <Button type="submit" look="main" busy={add.busy} busyWords="Saving …">
            Save the item
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
      <ItemParts
        form={form}
        errors={trouble?.fields ?? {}}
        unit={unit}
        today={garage.today}
        onMoved={add.clear}
      />
    </Form>
  );
}
