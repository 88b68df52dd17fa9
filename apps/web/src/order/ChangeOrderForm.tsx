'use client';

import type { OrderView } from '@quartermark/api/client';
import { type OrderInput, orderInput } from '@quartermark/engine/log';
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { type UseFormReturn, useForm } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, DateField, TextField } from '../components/index.ts';
import { Form, FormPair } from '../forms/Form.tsx';
import { TwoVersions } from '../forms/TwoVersions.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import type { Owned } from '../items/owned.ts';
import { useWritten } from '../items/use-written.ts';
import { versionRows } from '../items/version-rows.ts';
import { type OrderFields, orderFields, orderLines, readOrder } from './order-fields.ts';
import { RemoveOrder } from './RemoveOrder.tsx';

type ChangeOrderFormProps = { opened: OrderView; owned: Owned; onDone: () => void };

/** Changes an order, or takes it back. */
export function ChangeOrderForm({ opened, owned, onDone }: ChangeOrderFormProps) {
  const { orderId } = opened;
  const { garage } = owned;
  const garageId = garage.id;
  const trpc = useTRPC();
  const form = useForm<OrderFields>({ defaultValues: orderFields(opened.order, opened.revision) });
  const forget = useDraft(`order:${orderId}`, form);
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, readOrder);
  const { mutateAsync } = useMutation(trpc.order.change.mutationOptions());
  const change = useCommand(garageId, mutateAsync);
  const { stay } = useWritten(owned);
  const conflict = change.trouble?.refusal?.conflict;
  const newest = conflict ? orderInput.safeParse(conflict.body).data : undefined;

  /** @param before what this change is put on top of, to go back to */
  async function save(fields: OrderFields, before: OrderInput) {
    const read = readOrder(fields);
    setAsked(true);
    if ('problems' in read) return change.clear();
    const { baseRevision } = fields;
    const written = await change.send({ orderId, baseRevision, order: read.order });
    if (!written) return;
    forget();
    const undoing = { garageId, orderId, baseRevision: written.revision, order: before };
    const commandId = newId();
    await stay(written, () => mutateAsync({ ...undoing, commandId }));
    onDone();
  }

  function leave() {
    forget();
    onDone();
  }

  const trouble = wrong ?? change.trouble;
  const mine = readOrder(form.getValues());
  const both =
    conflict && newest ? (
      <TwoVersions
        rows={versionRows('order' in mine ? orderLines(mine.order) : [], orderLines(newest))}
        conflict={conflict}
        zone={garage.zone}
        change={change}
        onNewest={() => form.reset(orderFields(newest, conflict.revision))}
        onRest={() => form.setValue('baseRevision', conflict.revision)}
        onSave={() => save(form.getValues(), newest)}
      />
    ) : null;

  return (
    <Form
      label="Change this order"
      onSubmit={form.handleSubmit((fields) => save(fields, opened.order))}
      trouble={both ? null : trouble}
      actions={
        <>
          <Button type="submit" look="main" busy={change.busy} busyWords="Saving …">
            Save the change
          </Button>
          <RemoveOrder standing={opened} owned={owned} onRemoved={forget} />
          <Button onClick={leave}>Leave without saving</Button>
        </>
      }
    >
      <OrderDays form={form} errors={trouble?.fields ?? {}} />
      {both}
    </Form>
  );
}

type OrderDaysProps = { form: UseFormReturn<OrderFields>; errors: Record<string, string> };

function OrderDays({ form, errors }: OrderDaysProps) {
  return (
    <>
      <FormPair>
        <DateField label="Ordered on" error={errors['order.on']} {...form.register('on')} />
        <DateField
          label="Expected on"
          optional
          error={errors['order.expected']}
          {...form.register('expected')}
        />
      </FormPair>
      <DateField
        label="Arrived on"
        optional
        error={errors['order.arrived']}
        {...form.register('arrived')}
      />
      <FormPair>
        <TextField
          label="What"
          optional
          autoComplete="off"
          error={errors['order.what']}
          {...form.register('what')}
        />
        <TextField
          label="From where"
          optional
          autoComplete="off"
          error={errors['order.from']}
          {...form.register('from')}
        />
      </FormPair>
    </>
  );
}
