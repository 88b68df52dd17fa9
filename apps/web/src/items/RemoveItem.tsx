'use client';

import type { ItemView } from '@quartermark/api/client';
import { formatDay } from '@quartermark/engine/display';
import { useMutation } from '@tanstack/react-query';
import { newId } from '../client/make-id.ts';
import { refusalWords } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, Notice, useToast } from '../components/index.ts';
import { FormSection } from '../forms/Form.tsx';
import { addedAgain } from './added-again.ts';
import type { Owned } from './owned.ts';
import styles from './RemoveItem.module.css';
import { useWritten } from './use-written.ts';

type RemoveItemProps = { owned: Owned; standing: ItemView };

/** Takes an item off the list. A removed one stays removed, so the way back adds it as a new one. */
export function RemoveItem({ owned, standing }: RemoveItemProps) {
  const { garage, owner } = owned;
  const { id: itemId, revision: baseRevision, item } = standing;
  const trpc = useTRPC();
  const toast = useToast();
  const { mutateAsync: add } = useMutation(trpc.item.add.mutationOptions());
  const remove = useCommand(garage.id, useMutation(trpc.item.remove.mutationOptions()).mutateAsync);
  const { refresh, toOwner } = useWritten(owned);
  const service = owned.analysis?.items.find(({ id }) => id === itemId)?.service ?? null;
  const again = addedAgain(item, service);

  async function press() {
    if (!(await remove.send({ itemId, baseRevision }))) return;
    const adding = { garageId: garage.id, commandId: newId(), itemId: newId(), item: again };
    const id = `removed:${itemId}`;
    const undo = async () => {
      try {
        await add({ ...owner, ...adding });
        await refresh();
        toast({ id: `${id}:again`, words: 'Added again as a new item.', detail: doneWords(again) });
      } catch (error) {
        const detail = refusalWords(error).message;
        toast({ id: `${id}:again`, tone: 'alarm', words: 'Not added again.', detail });
      }
    };
    toast({
      id,
      words: `${item.name} is no longer watched.`,
      detail: 'Its entries stay in the log.',
      undo: { words: 'Add it again', run: () => void undo() },
    });
    await refresh();
    toOwner();
  }

  return (
    <div className={styles.remove}>
      <FormSection title="Remove it">
        <p>
          It is then no longer counted; the entries that did it stay in the log. It can be added
          again, but as a new item: counting then begins at the day it was last done, not at the
          entries of the removed one.
        </p>
        {remove.trouble ? <Notice tone="alarm">{remove.trouble.message}</Notice> : null}
        <div>
          <Button busy={remove.busy} busyWords="Removing …" onClick={press}>
            Remove this item
          </Button>
        </div>
      </FormSection>
    </div>
  );
}

function doneWords({ baseline }: RemoveItemProps['standing']['item']): string {
  return baseline ? `Counted from ${formatDay(baseline.on)}.` : 'Say when it was last done.';
}
