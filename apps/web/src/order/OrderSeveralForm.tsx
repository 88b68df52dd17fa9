'use client';

import { useMutation, useSuspenseQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button } from '../components/index.ts';
import { Form } from '../forms/Form.tsx';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import { ownedByCar } from '../items/owned.ts';
import { useWritten } from '../items/use-written.ts';
import { Ticks } from '../record/Ticks.tsx';
import { NewOrderParts } from './NewOrderParts.tsx';
import { type NewOrderFields, newOrderFields, readNewOrder } from './order-fields.ts';

type OrderSeveralFormProps = {
  garageId: string;
  carId: string;
  /** ticked from the start */
  items: readonly string[];
};

/** Parts for several items of a car were ordered together: an order of its own for each. */
export function OrderSeveralForm({ garageId, carId, items }: OrderSeveralFormProps) {
  const trpc = useTRPC();
  const { data: view } = useSuspenseQuery(trpc.car.view.queryOptions({ garageId, carId }));
  const owned = ownedByCar(view);
  const { today } = owned.garage;
  const [ticked, setTicked] = useState(items);
  // made once: pressed again after no answer, the same order is meant
  const [ids] = useState(() => new Map<string, string>());
  const [made, setMade] = useState<readonly Made[]>([]);
  const leads = owned.items.filter(({ id }) => items.includes(id)).map(({ item }) => item.leadDays);
  const form = useForm<NewOrderFields>({
    defaultValues: newOrderFields(today, Math.max(0, ...leads)),
  });
  const [asked, setAsked] = useState(false);
  const read = (fields: NewOrderFields) => readSeveral(fields, ticked);
  const wrong = useLocalTrouble(form, asked, read);
  const add = useCommand(garageId, useMutation(trpc.order.add.mutationOptions()).mutateAsync);
  const remove = useMutation(trpc.order.remove.mutationOptions());
  const { written, toOwner } = useWritten(owned);

  async function save(fields: NewOrderFields) {
    const found = read(fields);
    setAsked(true);
    if ('problems' in found) return add.clear();
    const all = [...made];
    for (const [at, itemId] of ticked.entries()) {
      const orderId = ids.get(itemId) ?? newId();
      ids.set(itemId, orderId);
      const answer = await add.send({ itemId, orderId, order: found.order });
      if (!answer) {
        // what is saved already is not sent again
        setTicked(ticked.slice(at));
        return setMade(all);
      }
      all.push({ orderId, baseRevision: answer.revision });
      if (at === ticked.length - 1) await written(answer, () => undo(all));
    }
  }

  async function undo(orders: readonly Made[]) {
    for (const order of orders)
      await remove.mutateAsync({ garageId, commandId: newId(), ...order });
  }

  const trouble = wrong ?? add.trouble;
  const errors = trouble?.fields ?? {};
  return (
    <Form
      label="Parts were ordered"
      onSubmit={form.handleSubmit(save)}
      trouble={trouble}
      actions={
        <>
          <Button type="submit" look="main" busy={add.busy} busyWords="Saving …">
            {ticked.length > 1 ? 'Save the orders' : 'Save the order'}
          </Button>
          <Button onClick={toOwner}>Leave without saving</Button>
        </>
      }
    >
      <Ticks
        legend="Parts for"
        none="No item is watched yet. Add one first, then say here that its parts were ordered."
        rows={owned.items.map(({ id, item }) => ({ id, words: item.name }))}
        done={ticked}
        onChange={setTicked}
        error={errors.items}
      />
      <NewOrderParts form={form} errors={errors} today={today} />
    </Form>
  );
}

type Made = { orderId: string; baseRevision: number };

function readSeveral(fields: NewOrderFields, ticked: readonly string[]) {
  const found = readNewOrder(fields);
  if (ticked.length > 0) return found;
  const problems = 'problems' in found ? found.problems : {};
  return { problems: { ...problems, items: 'Tick at least one item whose parts were ordered.' } };
}
