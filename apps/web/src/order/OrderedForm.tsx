'use client';

import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import { Form } from '../forms/Form.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import type { Owned } from '../items/owned.ts';
import { useWritten } from '../items/use-written.ts';
import { NewOrderParts } from './NewOrderParts.tsx';
import { type NewOrderFields, newOrderFields, readNewOrder } from './order-fields.ts';

type OrderedFormProps = { owned: Owned; itemId: string; leadDays: number };

/** Parts were ordered: one press opens it, the next one saves it as of today. */
export function OrderedForm(props: OrderedFormProps) {
  // a saved one leaves a folded, empty form behind
  const [orderId, setOrderId] = useState(newId);
  return (
    <Fold key={orderId} title="Ordered">
      <NewOrder {...props} orderId={orderId} onSaved={() => setOrderId(newId())} />
    </Fold>
  );
}

type NewOrderProps = OrderedFormProps & { orderId: string; onSaved: () => void };

function NewOrder({ owned, itemId, leadDays, orderId, onSaved }: NewOrderProps) {
  const { garage } = owned;
  const { id: garageId, today } = garage;
  const trpc = useTRPC();
  const form = useForm<NewOrderFields>({ defaultValues: newOrderFields(today, leadDays) });
  const forget = useDraft(`order-add:${itemId}`, form);
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, readNewOrder);
  const add = useCommand(garageId, useMutation(trpc.order.add.mutationOptions()).mutateAsync);
  const remove = useMutation(trpc.order.remove.mutationOptions());
  const { stay } = useWritten(owned);

  async function save(fields: NewOrderFields) {
    const read = readNewOrder(fields);
    setAsked(true);
    if ('problems' in read) return add.clear();
    const written = await add.send({ itemId, orderId, order: read.order });
    if (!written) return;
    forget();
    const undoing = { garageId, commandId: newId(), orderId, baseRevision: written.revision };
    await stay(written, () => remove.mutateAsync(undoing));
    onSaved();
  }

  const trouble = wrong ?? add.trouble;
  return (
    <Form
      label="Parts were ordered"
      onSubmit={form.handleSubmit(save)}
      trouble={trouble}
      actions={
        <Button type="submit" look="main" busy={add.busy} busyWords="Saving …">
          Save the order
        </Button>
      }
    >
      <NewOrderParts form={form} errors={trouble?.fields ?? {}} today={today} />
    </Form>
  );
}
