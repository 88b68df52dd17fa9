'use client';

import type { PlannedLayUpView } from '@quartermark/api/client';
import { useMutation } from '@tanstack/react-query';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, Notice } from '../components/index.ts';
import { FormSection } from '../forms/Form.tsx';
import { usePlanSaved } from './use-plan-saved.ts';

type RemovePlanProps = { standing: PlannedLayUpView; garageId: string };

/** Drops the plan of a lay-up; the way back plans it again. */
export function RemovePlan({ standing, garageId }: RemovePlanProps) {
  const { layUpId, carId, layUp, revision: baseRevision } = standing;
  const trpc = useTRPC();
  const { mutateAsync: add } = useMutation(trpc.plannedLayUp.add.mutationOptions());
  const { mutateAsync } = useMutation(trpc.plannedLayUp.remove.mutationOptions());
  const remove = useCommand(garageId, mutateAsync);
  const { saved } = usePlanSaved(garageId, `/g/${garageId}/car/${carId}`);

  async function press() {
    const written = await remove.send({ layUpId, baseRevision });
    if (!written) return;
    // a removed one stays removed: it comes back under an id of its own
    const adding = { garageId, commandId: newId(), layUpId: newId(), carId, layUp };
    await saved(written, {
      carId,
      undo: () => add(adding),
      words: 'The lay-up is no longer planned.',
    });
  }

  return (
    <FormSection title="Drop the plan">
      <p>A lay-up that was recorded stays in the log.</p>
      {remove.trouble ? <Notice tone="alarm">{remove.trouble.message}</Notice> : null}
      <div>
        <Button busy={remove.busy} busyWords="Dropping …" onClick={press}>
          Drop it
        </Button>
      </div>
    </FormSection>
  );
}
