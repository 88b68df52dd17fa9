'use client';

import type { OrderView } from '@quartermark/api/client';
import { orderInput } from '@quartermark/engine/log';
import { useMutation } from '@tanstack/react-query';
import { useTRPC } from '../client/trpc.ts';
import { DateField } from '../components/index.ts';
import { ChangeForm } from '../forms/ChangeForm.tsx';
import { FormPair } from '../forms/Form.tsx';
import { useChange } from '../forms/use-change.tsx';
import type { Owned } from '../items/owned.ts';
import { useWritten } from '../items/use-written.ts';
import { type OrderFields, orderFields, orderLines, readOrder } from './order-fields.ts';
import { RemoveOrder } from './RemoveOrder.tsx';
import { WhatAndFrom } from './WhatAndFrom.tsx';

type ChangeOrderFormProps = { opened: OrderView; owned: Owned; onDone: () => void };

/** Changes an order, or takes it back. */
export function ChangeOrderForm({ opened, owned, onDone }: ChangeOrderFormProps) {
  const { orderId, order, revision } = opened;
  const trpc = useTRPC();
  const { mutateAsync } = useMutation(trpc.order.change.mutationOptions());
  const { stay } = useWritten(owned);
  const change = useChange({
    garage: owned.garage,
    draft: `order:${orderId}`,
    opened: { body: order, revision },
    fieldsOf: orderFields,
    read,
    schema: orderInput,
    lines: orderLines,
    send: (body, on) => mutateAsync({ ...on, orderId, order: body }),
    after: async (written, undo) => {
      await stay(written, undo);
      onDone();
    },
  });
  const { form, errors, forget } = change;
  return (
    <ChangeForm
      label="Change this order"
      change={change}
      beside={<RemoveOrder standing={opened} owned={owned} onRemoved={forget} />}
      onLeave={onDone}
    >
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
      <WhatAndFrom what={form.register('what')} from={form.register('from')} errors={errors} />
    </ChangeForm>
  );
}

function read(fields: OrderFields) {
  const found = readOrder(fields);
  return 'order' in found ? { body: found.order } : found;
}
