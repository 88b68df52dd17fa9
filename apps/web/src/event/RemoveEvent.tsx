'use client';

import type { EventView } from '@quartermark/api/client';
import { useMutation } from '@tanstack/react-query';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, Notice } from '../components/index.ts';
import { FormSection } from '../forms/Form.tsx';
import { useEventSaved } from './use-event-saved.ts';

type RemoveEventProps = { standing: EventView; garageId: string };

/** Takes an event off the calendar; the way back puts it there again. */
export function RemoveEvent({ standing, garageId }: RemoveEventProps) {
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
      words: `${event.name} is off the calendar.`,
    });
  }

  return (
    <FormSection title="Take it off the calendar">
      <p>What was recorded on its days stays in the log.</p>
      {remove.trouble ? <Notice tone="alarm">{remove.trouble.message}</Notice> : null}
      <div>
        <Button busy={remove.busy} busyWords="Removing …" onClick={press}>
          Remove it
        </Button>
      </div>
    </FormSection>
  );
}
