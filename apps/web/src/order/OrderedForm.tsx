'use client';

import { weekdayAhead } from '@quartermark/engine/display';
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { Controller, useForm, useWatch } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, DateField, Stepper } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import { Form, FormPair } from '../forms/Form.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import type { Owned } from '../items/owned.ts';
import { useWritten } from '../items/use-written.ts';
import { expectedDay, type NewOrderFields, newOrderFields, readNewOrder } from './order-fields.ts';
import { WhatAndFrom } from './WhatAndFrom.tsx';

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
  const errors = trouble?.fields ?? {};
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
      <FormPair>
        <Controller
          control={form.control}
          name="expectedIn"
          render={({ field }) => (
            <Stepper
              label="Expected in"
              hint={<Expected control={form.control} today={today} />}
              optional
              unit="days"
              max={730}
              name={field.name}
              value={field.value}
              onChange={field.onChange}
              error={errors['order.expected']}
            />
          )}
        />
        <DateField label="Ordered on" error={errors['order.on']} {...form.register('on')} />
      </FormPair>
      <WhatAndFrom what={form.register('what')} from={form.register('from')} errors={errors} />
    </Form>
  );
}

type ExpectedProps = {
  control: ReturnType<typeof useForm<NewOrderFields>>['control'];
  today: string;
};

/** The day the stepper stands on. */
function Expected({ control, today }: ExpectedProps) {
  const fields = useWatch({ control }) as NewOrderFields;
  const day = expectedDay(fields);
  return day === '' ? 'No day is expected.' : `That is ${weekdayAhead(day, { asOf: today })}.`;
}
