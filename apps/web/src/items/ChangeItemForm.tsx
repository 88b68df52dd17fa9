'use client';

import type { ItemView } from '@quartermark/api/client';
import { itemInput } from '@quartermark/engine/log';
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { useTRPC } from '../client/trpc.ts';
import { Notice } from '../components/index.ts';
import { ChangeForm } from '../forms/ChangeForm.tsx';
import { useChange } from '../forms/use-change.tsx';
import { Orders } from '../order/Orders.tsx';
import { ItemParts } from './ItemParts.tsx';
import { type ItemFields, itemFields, readItem } from './item-fields.ts';
import { itemLines } from './item-lines.ts';
import type { Owned } from './owned.ts';
import { RemoveItem } from './RemoveItem.tsx';
import { useWritten } from './use-written.ts';

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
  const { id: itemId, item, revision } = opened;
  const { mutateAsync } = useMutation(trpc.item.change.mutationOptions());
  const { written, toOwner } = useWritten(owned);
  const change = useChange({
    garage,
    draft: `item:${itemId}`,
    opened: { body: item, revision },
    fieldsOf: (body, rests) => itemFields(body, rests, unit),
    read,
    schema: itemInput,
    lines: itemLines,
    send: (body, on) => mutateAsync({ ...on, itemId, item: body }),
    after: written,
  });
  return (
    <ChangeForm label="Change the item" change={change} saveWords="Save the item" onLeave={toOwner}>
      <ItemParts
        form={change.form}
        errors={change.errors}
        unit={unit}
        today={garage.today}
        onMoved={change.clear}
      />
    </ChangeForm>
  );
}

function read(fields: ItemFields) {
  const found = readItem(fields);
  return 'item' in found ? { body: found.item } : found;
}
