'use client';

import type { EventView, GarageView } from '@quartermark/api/client';
import { eventInput } from '@quartermark/engine/log';
import { useMutation, useSuspenseQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useTRPC } from '../client/trpc.ts';
import { Notice } from '../components/index.ts';
import { ChangeForm } from '../forms/ChangeForm.tsx';
import { useChange } from '../forms/use-change.tsx';
import { CancelEvent } from './CancelEvent.tsx';
import type { Person } from './Crew.tsx';
import { EventParts } from './EventParts.tsx';
import { type EventFields, eventFields, eventLines, readEvent } from './event-fields.ts';
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
  const { eventId, event, revision } = opened;
  const { id: garageId, distanceUnit: unit } = garage;
  const trpc = useTRPC();
  const { mutateAsync } = useMutation(trpc.event.change.mutationOptions());
  const { saved, toList } = useEventSaved(garageId);
  const nameOf = namesOf(names, people);
  const change = useChange({
    garage,
    draft: `event:${eventId}`,
    opened: { body: event, revision },
    fieldsOf: (body, rests) => eventFields(body, rests, unit),
    read,
    schema: eventInput,
    lines: (body) => eventLines(body, nameOf),
    send: (body, on) => mutateAsync({ ...on, eventId, event: body }),
    after: (written, undo) => saved(written, { undo }),
  });
  return (
    <ChangeForm label="Change the event" change={change} onLeave={toList}>
      <EventParts
        form={change.form}
        errors={change.errors}
        garageId={garageId}
        unit={unit}
        names={names}
        people={people}
      />
    </ChangeForm>
  );
}

function read(fields: EventFields) {
  const found = readEvent(fields);
  return 'event' in found ? { body: found.event } : found;
}
