'use client';

import type { EventView } from '@quartermark/api/client';
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { Route } from 'next';
import { useState } from 'react';
import { newId } from '../client/make-id.ts';
import { refusalWords } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, ButtonLink, useToast } from '../components/index.ts';
import { DID_NOT_GO } from '../debrief/did-not-go.ts';
import { closingDay } from '../debrief/expected-use.ts';
import styles from './Unrecorded.module.css';
import { unrecordedWords } from './unrecorded-words.ts';

/** The events that are over and named cars of which nothing is on record, with the ways to say it. */
export function Unrecorded({ garageId }: { garageId: string }) {
  const trpc = useTRPC();
  const { data } = useQuery(trpc.event.unrecorded.queryOptions({ garageId }));
  if (!data || data.events.length === 0) return null;
  const { garage, events } = data;
  return (
    <section className={styles.asks} aria-label="Not on record yet">
      <h2>Not on record yet</h2>
      {events.map(({ cars, ...view }) => (
        <UnrecordedLine key={view.eventId} garage={garage} view={view} cars={cars} />
      ))}
    </section>
  );
}

type Garage = { id: string; zone: string; today: string };
type Car = { carId: string; name: string };

type UnrecordedLineProps = {
  garage: Garage;
  view: Pick<EventView, 'eventId' | 'event'>;
  /** of which nothing is on record */
  cars: readonly Car[];
};

/** One event that is over: what did these cars do? */
export function UnrecordedLine({ garage, view, cars }: UnrecordedLineProps) {
  const { eventId, event } = view;
  const [only] = cars.length === 1 ? cars : [];
  const names = cars.map(({ name }) => name);
  return (
    <div className={styles.line}>
      <p>{unrecordedWords(event, names, garage.today)}</p>
      <div className={styles.ways}>
        <ButtonLink href={`/g/${garage.id}/events/${eventId}/debrief` as Route}>
          Debrief<span className={styles.unseen}>: {event.name}</span>
        </ButtonLink>
        {only ? <Stayed garage={garage} view={view} car={only} /> : null}
      </div>
    </div>
  );
}

type StayedProps = Pick<UnrecordedLineProps, 'garage' | 'view'> & { car: Car };

/** Says of a car that it did not go; the way back takes that out of the log again. */
function Stayed({ garage, view, car }: StayedProps) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const toast = useToast();
  // made once: pressed again after no answer, the same is meant
  const [entryId] = useState(newId);
  const { mutateAsync: remove } = useMutation(trpc.entry.remove.mutationOptions());
  const record = useCommand(
    garage.id,
    useMutation(trpc.entry.record.mutationOptions()).mutateAsync,
    ({ message }) => toast({ words: 'Not saved.', detail: message, tone: 'alarm' }),
  );
  const refresh = () =>
    Promise.all(
      [trpc.event, trpc.entry, trpc.car].map((path) =>
        client.invalidateQueries({ queryKey: path.pathKey() }),
      ),
    );

  async function press() {
    const written = await record.send({
      entry: {
        id: entryId,
        kind: 'answer',
        on: closingDay(view.event, garage.today),
        zone: garage.zone,
        car: car.carId,
        notice: view.eventId,
        answer: DID_NOT_GO,
      },
    });
    if (!written) return;
    const undoing = {
      garageId: garage.id,
      commandId: newId(),
      entryId,
      baseRevision: written.revision,
    };
    const id = `stayed:${entryId}`;
    const undo = async () => {
      try {
        await remove(undoing);
        toast({ id, words: 'Undone.' });
      } catch (error) {
        toast({ id, words: 'Not undone.', detail: refusalWords(error).message, tone: 'alarm' });
      }
      await refresh();
    };
    toast({
      id,
      words: `Saved: ${car.name} did not go.`,
      undo: { run: () => void undo() },
    });
    await refresh();
  }

  return (
    <Button busy={record.busy} busyWords="Saving …" onClick={press}>
      It did not go
    </Button>
  );
}
