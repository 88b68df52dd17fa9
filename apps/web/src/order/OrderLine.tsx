'use client';

import type { OrderView } from '@quartermark/api/client';
import { orderWords } from '@quartermark/engine/display';
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, Notice } from '../components/index.ts';
import type { Owned } from '../items/owned.ts';
import { useWritten } from '../items/use-written.ts';
import { ChangeOrderForm } from './ChangeOrderForm.tsx';
import styles from './Orders.module.css';

type OrderLineProps = {
  standing: OrderView;
  /** false: a later service closed it */
  stands: boolean;
  owned: Owned;
};

/** One order: when it comes, one press to say that it is here, and the way to change it. */
export function OrderLine({ standing, stands, owned }: OrderLineProps) {
  const { orderId, order, revision: baseRevision } = standing;
  const { id: garageId, today } = owned.garage;
  const trpc = useTRPC();
  const { mutateAsync } = useMutation(trpc.order.change.mutationOptions());
  const change = useCommand(garageId, mutateAsync);
  const { stay } = useWritten(owned);
  // what the form was opened with: it stays the same while the page is kept up to date
  const [changing, setChanging] = useState<OrderView | null>(null);

  async function itArrived() {
    // an order of tomorrow, from across the date line, cannot come before it was made
    const [, arrived = today] = [today, order.on].sort();
    const here = { ...order, arrived };
    const written = await change.send({ orderId, baseRevision, order: here });
    if (!written) return;
    const undoing = { garageId, orderId, baseRevision: written.revision, order };
    const commandId = newId();
    await stay(written, () => mutateAsync({ ...undoing, commandId }));
  }

  const { what, from } = order;
  const here = stands && order.arrived !== undefined;
  const words = `${orderWords(order, { asOf: today })}${here ? ', on the shelf' : ''}`;
  return (
    <li className={styles.order}>
      <div className={styles.line}>
        <div>
          <p>
            {what ? `${what}: ` : ''}
            {what ? words : words.charAt(0).toUpperCase() + words.slice(1)}
          </p>
          {from ? <p className={styles.soft}>From {from}</p> : null}
          {stands ? null : <p className={styles.soft}>Done with: the item was done since.</p>}
        </div>
        {stands && order.arrived === undefined ? (
          <Button busy={change.busy} busyWords="Saving …" onClick={itArrived}>
            Arrived
          </Button>
        ) : null}
      </div>
      {change.trouble ? <Notice tone="alarm">{change.trouble.message}</Notice> : null}
      {changing ? (
        <ChangeOrderForm opened={changing} owned={owned} onDone={() => setChanging(null)} />
      ) : (
        <div>
          <Button look="quiet" onClick={() => setChanging(standing)}>
            Change this order
          </Button>
        </div>
      )}
    </li>
  );
}
