'use client';

import type { EventView, GarageView } from '@quartermark/api/client';
import { type EventInput, eventInput } from '@quartermark/engine/log';
import { useMutation, useSuspenseQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, Notice } from '../components/index.ts';
import { Form } from '../forms/Form.tsx';
import { TwoVersions } from '../forms/TwoVersions.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import { versionRows } from '../items/version-rows.ts';
import { CancelEvent } from './CancelEvent.tsx';
import type { Person } from './Crew.tsx';
import { EventParts } from './EventParts.tsx';
import {
  type EventFields,
  eventFields,
  eventLines,
  type NamesOf,
  readEvent,
} from './event-fields.ts';
import { namesOf } from './names-of.ts';
import { useEventSaved } from './use-event-saved.ts';

type ChangeEventFormProps = { garageId: string; eventId: string };

/** Changes an event, or cancels it. */
export function ChangeEventForm({ garageId, eventId }: ChangeEventFormProps) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.event.list.queryOptions({ garageId }));
  const standing = data.events.find((one) => one.eventId === eventId);
  // what the form was opened with: it stays the same while the page is kept up to date
  const [opened] = useState(standing);
  if (!opened)
    return (
      <Notice tone="alarm">This event is no longer on the calendar. Go back to the list.</Notice>
    );
  return (
    <>
      <Opened opened={opened} garage={data.garage} names={data.cars} people={data.people} />
      {standing ? <CancelEvent standing={standing} garageId={garageId} /> : null}
    </>
  );
}

type OpenedProps = {
  opened: EventView;
  garage: GarageView;
  names: Readonly<Record<string, string>>;
  people: readonly Person[];
};

function Opened({ opened, garage, names, people }: OpenedProps) {
  const { eventId } = opened;
  const { id: garageId, distanceUnit: unit } = garage;
  const trpc = useTRPC();
  const form = useForm<EventFields>({
    defaultValues: eventFields(opened.event, opened.revision, unit),
  });
  const forget = useDraft(`event:${eventId}`, form);
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, readEvent);
  const { mutateAsync } = useMutation(trpc.event.change.mutationOptions());
  const change = useCommand(garageId, mutateAsync);
  const { saved, toList } = useEventSaved(garageId);
  const conflict = change.trouble?.refusal?.conflict;
  const newest = conflict ? eventInput.safeParse(conflict.body).data : undefined;
  const nameOf = namesOf(names, people);

  /** @param before what this change is put on top of, to go back to */
  async function save(fields: EventFields, before: EventInput) {
    const read = readEvent(fields);
    setAsked(true);
    if ('problems' in read) return change.clear();
    const written = await change.send({
      eventId,
      baseRevision: fields.baseRevision,
      event: read.event,
    });
    if (!written) return;
    forget();
    const undoing = { garageId, eventId, baseRevision: written.revision, event: before };
    const commandId = newId();
    await saved(written, { undo: () => mutateAsync({ ...undoing, commandId }) });
  }

  const trouble = wrong ?? change.trouble;
  const both =
    conflict && newest ? (
      <TwoVersions
        rows={versionRows(mineLines(form.getValues(), nameOf), eventLines(newest, nameOf))}
        conflict={conflict}
        zone={garage.zone}
        change={change}
        onNewest={() => form.reset(eventFields(newest, conflict.revision, unit))}
        onRest={() => form.setValue('baseRevision', conflict.revision)}
        onSave={() => save(form.getValues(), newest)}
      />
    ) : null;

  return (
    <Form
      label="Change the event"
      onSubmit={form.handleSubmit((fields) => save(fields, opened.event))}
      trouble={both ? null : trouble}
      actions={
        <>
          <Button type="submit" look="main" busy={change.busy} busyWords="Saving …">
            Save the change
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
      <EventParts
        form={form}
        errors={trouble?.fields ?? {}}
        garageId={garageId}
        unit={unit}
        names={names}
        people={people}
      />
      {both}
    </Form>
  );
}

/** What stands in the form, in words; it was readable when it was sent. */
function mineLines(fields: EventFields, names: NamesOf) {
  const read = readEvent(fields);
  const event = 'event' in read ? eventInput.safeParse(read.event).data : undefined;
  return event ? eventLines(event, names) : [];
}
