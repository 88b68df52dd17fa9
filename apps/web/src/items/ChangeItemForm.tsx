'use client';

import type { ItemView } from '@quartermark/api/client';
import { type ItemInput, itemInput } from '@quartermark/engine/log';
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, Notice } from '../components/index.ts';
import { Form } from '../forms/Form.tsx';
import { TwoVersions } from '../forms/TwoVersions.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import { Orders } from '../order/Orders.tsx';
import { ItemParts } from './ItemParts.tsx';
import { type ItemFields, itemFields, readItem } from './item-fields.ts';
import { itemLines } from './item-lines.ts';
import type { Owned } from './owned.ts';
import { RemoveItem } from './RemoveItem.tsx';
import { useWritten } from './use-written.ts';
import { versionRows } from './version-rows.ts';

type ChangeItemFormProps = { owned: Owned; itemId: string };

/** Changes an item, or takes it off the list. What others save meanwhile is never overwritten unseen. */
export function ChangeItemForm({ owned, itemId }: ChangeItemFormProps) {
  const standing = owned.items.find(({ id }) => id === itemId);
  // what the form was opened with: it stays the same while the page is kept up to date
  const [opened] = useState(standing);
  if (!opened)
    return (
      <Notice tone="alarm">This item is no longer on the list. Go back and choose again.</Notice>
    );
  return (
    <>
      {standing ? <Orders owned={owned} item={standing} /> : null}
      <Opened owned={owned} opened={opened} />
      {standing ? <RemoveItem owned={owned} standing={standing} /> : null}
    </>
  );
}

type OpenedProps = { owned: Owned; opened: ItemView };

function Opened({ owned, opened }: OpenedProps) {
  const trpc = useTRPC();
  const { unit, garage } = owned;
  const garageId = garage.id;
  const form = useForm<ItemFields>({
    defaultValues: itemFields(opened.item, opened.revision, unit),
  });
  const forget = useDraft(`item:${opened.id}`, form);
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, readItem);
  const { mutateAsync } = useMutation(trpc.item.change.mutationOptions());
  const change = useCommand(garageId, mutateAsync);
  const { written, toOwner } = useWritten(owned);
  const conflict = change.trouble?.refusal?.conflict;
  const newest = conflict ? itemInput.safeParse(conflict.body).data : undefined;

  /** @param before what this change is put on top of, to go back to */
  async function save(fields: ItemFields, before: ItemInput) {
    const read = readItem(fields);
    setAsked(true);
    if ('problems' in read) return change.clear();
    const { baseRevision } = fields;
    const saved = await change.send({ itemId: opened.id, baseRevision, item: read.item });
    if (!saved) return;
    forget();
    const undoing = { garageId, itemId: opened.id, baseRevision: saved.revision, item: before };
    const commandId = newId();
    await written(saved, () => mutateAsync({ ...undoing, commandId }));
  }

  const trouble = wrong ?? change.trouble;
  const both =
    conflict && newest ? (
      <TwoVersions
        rows={versionRows(mineLines(form.getValues()), itemLines(newest))}
        conflict={conflict}
        zone={garage.zone}
        change={change}
        onNewest={() => form.reset(itemFields(newest, conflict.revision, unit))}
        onRest={() => form.setValue('baseRevision', conflict.revision)}
        onSave={() => save(form.getValues(), newest)}
      />
    ) : null;

  return (
    <Form
      label="Change the item"
      onSubmit={form.handleSubmit((fields) => save(fields, opened.item))}
      trouble={both ? null : trouble}
      actions={
        <>
          <Button type="submit" look="main" busy={change.busy} busyWords="Saving …">
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
        onMoved={change.clear}
      />
      {both}
    </Form>
  );
}

/** What stands in the form, in words; it was readable when it was sent. */
function mineLines(fields: ItemFields) {
  const read = readItem(fields);
  const item = 'item' in read ? itemInput.safeParse(read.item).data : undefined;
  return item ? itemLines(item) : [];
}
