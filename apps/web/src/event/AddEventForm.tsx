'use client';

import { useMutation, useSuspenseQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button } from '../components/index.ts';
import { Form } from '../forms/Form.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import { EventParts } from './EventParts.tsx';
import { eventOfAddress } from './event-address.ts';
import { type EventFields, emptyEvent, readEvent } from './event-fields.ts';
import { TakeOver } from './TakeOver.tsx';
import { useEventSaved } from './use-event-saved.ts';

type AddEventFormProps = {
  garageId: string;
  /** the query of the page's address, which may fill the form in */
  address: Readonly<Record<string, string | string[] | undefined>>;
};

/** Puts an event on the calendar. */
export function AddEventForm({ garageId, address }: AddEventFormProps) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.event.list.queryOptions({ garageId }));
  const unit = data.garage.distanceUnit;
  const filled = eventOfAddress(address, unit);
  const form = useForm<EventFields>({ defaultValues: filled ?? emptyEvent(unit) });
  // what was typed for another event must not take the place of what the address fills in
  const plan = filled === null ? '' : `:${String(address.plan)}`;
  const forget = useDraft(`event-add:${garageId}${plan}`, form);
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, readEvent);
  const add = useCommand(garageId, useMutation(trpc.event.add.mutationOptions()).mutateAsync);
  const remove = useMutation(trpc.event.remove.mutationOptions());
  // made once: pressed again after no answer, the same event is meant
  const [eventId] = useState(newId);
  const { saved, toList } = useEventSaved(garageId);

  async function save(fields: EventFields) {
    const read = readEvent(fields);
    setAsked(true);
    if ('problems' in read) return add.clear();
    const written = await add.send({ eventId, event: read.event });
    if (!written) return;
    forget();
    const undoing = {
      garageId,
      commandId: newId(),
      eventId,
      baseRevision: written.revision,
    };
    await saved(written, { undo: () => remove.mutateAsync(undoing) });
  }

  const trouble = wrong ?? add.trouble;
  return (
    <Form
      label="Add an event"
      onSubmit={form.handleSubmit(save)}
      trouble={trouble}
      actions={
        <>
          <Button type="submit" look="main" busy={add.busy} busyWords="Saving …">
            Add the event
          </Button>
          <Button
            onClick={() => {
              forget();
              toList();
            }}
          >
            Leave without saving
          </Button>
        </>
      }
    >
      {filled === null ? (
        <TakeOver form={form} garage={data.garage} names={data.cars} people={data.people} />
      ) : null}
      <EventParts
        form={form}
        errors={trouble?.fields ?? {}}
        garageId={garageId}
        unit={unit}
        names={data.cars}
        people={data.people}
      />
    </Form>
  );
}
