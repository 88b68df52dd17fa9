'use client';

import type { GarageView, GearRow } from '@quartermark/api/client';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { newId } from '../client/make-id.ts';
import { refusalWords } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, Notice, useToast } from '../components/index.ts';
import { FormSection } from '../forms/Form.tsx';
import { addedAgain } from '../items/added-again.ts';

type RemoveGearProps = { row: GearRow; garage: GarageView };

/** Takes it off the list. A removed one stays removed, so the way back adds it as a new one. */
export function RemoveGear({ row, garage }: RemoveGearProps) {
  const { gearId, gear, revision: baseRevision } = row;
  const trpc = useTRPC();
  const client = useQueryClient();
  const router = useRouter();
  const toast = useToast();
  const { mutateAsync: add } = useMutation(trpc.gear.add.mutationOptions());
  const remove = useCommand(garage.id, useMutation(trpc.gear.remove.mutationOptions()).mutateAsync);
  const refresh = () => client.invalidateQueries({ queryKey: trpc.gear.pathKey() });

  async function press() {
    if (!(await remove.send({ gearId, baseRevision }))) return;
    const adding = {
      garageId: garage.id,
      commandId: newId(),
      gearId: newId(),
      gear,
      items: againItems(row),
    };
    const id = `removed:${gearId}`;
    const undo = async () => {
      try {
        await add(adding);
        await refresh();
        toast({ id: `${id}:again`, words: 'Added again as a new one.' });
      } catch (error) {
        const detail = refusalWords(error).message;
        toast({ id: `${id}:again`, tone: 'alarm', words: 'Not added again.', detail });
      }
    };
    toast({
      id,
      words: `${gear.name} is no longer on the list.`,
      detail: 'Its entries stay in the log.',
      undo: { words: 'Add it again', run: () => void undo() },
    });
    router.push(`/g/${garage.id}/gear` as Route);
    await refresh();
  }

  return (
    <FormSection title="Remove it">
      <p>
        It then leaves the list with its items; its entries stay in the log. It can be added again,
        but as a new one: use that was counted for it stays with the removed one.
      </p>
      {remove.trouble ? <Notice tone="alarm">{remove.trouble.message}</Notice> : null}
      <div>
        <Button
          busy={remove.busy}
          busyWords="Removing …"
          reason={row.fittedTo ? `It is on ${row.fittedTo.name}; take it off there first.` : null}
          onClick={press}
        >
          Remove it
        </Button>
      </div>
    </FormSection>
  );
}

/** Its items as they are added again, counted from the day each was last done. */
function againItems({ items, analysis }: GearRow) {
  return items.map(({ id, item }) => {
    const service = analysis?.items.find((result) => result.id === id)?.service ?? null;
    return { itemId: newId(), item: addedAgain(item, service) };
  });
}
