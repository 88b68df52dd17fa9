'use client';

import type { EventView } from '@quartermark/api/client';
import { useMutation } from '@tanstack/react-query';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, Notice } from '../components/index.ts';
import { FormSection } from '../forms/Form.tsx';
import { useEventSaved } from './use-event-saved.ts';

type CancelEventProps = { standing: EventView; garageId: string };

/** Cancels an event: it leaves the calendar; the way back puts it there again. */
export function CancelEvent({ standing, garageId }: CancelEventProps) {
  const { eventId, event, revision: baseRevision } = standing;
  const trpc = useTRPC();
  const { mutateAsync: add } = useMutation(trpc.event.add.mutationOptions());
  const remove = useCommand(garageId, useMutation(trpc.event.remove.mutationOptions()).mutateAsync);
  const { saved } = useEventSaved(garageId);

  async function press() {
    const written = await remove.send({ eventId, baseRevision });
    if (!written) return;
    // a removed one stays removed: it comes back under an id of its own
    const adding = { garageId, commandId: newId(), eventId: newId(), event };
    await saved(written, {
      undo: () => add(adding),
      words: `${event.name} is cancelled.`,
    });
  }

  return (
    <FormSection title="If it does not take place">
      <p>
        It leaves the calendar and counts for no car any more. What was recorded on its days stays
        in the log.
      </p>
      {remove.trouble ? <Notice tone="alarm">{remove.trouble.message}</Notice> : null}
      <div>
        <Button busy={remove.busy} busyWords="Cancelling …" onClick={press}>
          Cancel the event
        </Button>
      </div>
    </FormSection>
  );
}
