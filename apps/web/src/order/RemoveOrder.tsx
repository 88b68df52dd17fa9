'use client';

import type { OrderView } from '@quartermark/api/client';
import { useMutation } from '@tanstack/react-query';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, useToast } from '../components/index.ts';
import type { Owned } from '../items/owned.ts';
import { useWritten } from '../items/use-written.ts';

type RemoveOrderProps = { standing: OrderView; owned: Owned; onRemoved: () => void };

/** Takes an order back; the way back writes it down again. */
export function RemoveOrder({ standing, owned, onRemoved }: RemoveOrderProps) {
  const { orderId, itemId, order, revision: baseRevision } = standing;
  const garageId = owned.garage.id;
  const trpc = useTRPC();
  const toast = useToast();
  const { mutateAsync: add } = useMutation(trpc.order.add.mutationOptions());
  const remove = useCommand(
    garageId,
    useMutation(trpc.order.remove.mutationOptions()).mutateAsync,
    ({ message }) =>
      toast({ id: `order:${orderId}`, tone: 'alarm', words: 'Not removed.', detail: message }),
  );
  const { stay } = useWritten(owned);

  async function press() {
    const written = await remove.send({ orderId, baseRevision });
    if (!written) return;
    onRemoved();
    // a removed one stays removed: it comes back under an id of its own
    const adding = { garageId, commandId: newId(), itemId, orderId: newId(), order };
    await stay(written, () => add(adding));
  }

  return (
    <Button busy={remove.busy} busyWords="Removing …" onClick={press}>
      Remove this order
    </Button>
  );
}
