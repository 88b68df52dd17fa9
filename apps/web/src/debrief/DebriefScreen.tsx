'use client';

import type { EventPage } from '@quartermark/api/client';
import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useState } from 'react';
import { useForm, useWatch } from 'react-hook-form';
import { useTRPC } from '../client/trpc.ts';
import { Button, ButtonLink, EmptyState, Notice, PageAnswer } from '../components/index.ts';
import { spanWords } from '../event/event-words.ts';
import { Form } from '../forms/Form.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { CarDebrief } from './CarDebrief.tsx';
import { type CarFields, type DebriefFields, emptyCar } from './debrief-fields.ts';
import { type Part, type ReadCar, readCar } from './debrief-parts.ts';
import { debriefAnswer } from './debrief-words.ts';
import { daysOfUse } from './expected-use.ts';
import { type SavedWords, useDebriefSaving } from './use-debrief-saving.ts';
import { useKeptIds } from './use-kept-ids.ts';
import { useStayed } from './use-stayed.ts';

type DebriefScreenProps = { garageId: string; eventId: string };

/** What the cars did at an event and how they came back: one form, each line an entry of its own. */
export function DebriefScreen({ garageId, eventId }: DebriefScreenProps) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.event.view.queryOptions({ garageId, eventId }));
  const { event } = data.event;
  const { today } = data.garage;
  const begun = daysOfUse(event, today).length > 0;
  return (
    <>
      <PageAnswer about={`${event.name}: debrief`} beneath={spanWords(event)}>
        {debriefAnswer(event, data.cars, today)}
      </PageAnswer>
      {data.cars.length === 0 ? <NoCar {...{ garageId, eventId }} /> : null}
      {begun && data.cars.length > 0 ? <DebriefForm page={data} /> : null}
    </>
  );
}

function NoCar({ garageId, eventId }: DebriefScreenProps) {
  return (
    <EmptyState
      title="No car is named for it"
      actions={
        <ButtonLink href={`/g/${garageId}/events/${eventId}/change` as Route}>
          Say which cars went
        </ButtonLink>
      }
    >
      <p>A debrief asks each car that the event names what it did.</p>
    </EmptyState>
  );
}

function DebriefForm({ page }: { page: EventPage }) {
  const { garage, cars } = page;
  const { eventId, event } = page.event;
  const form = useForm<DebriefFields>({ defaultValues: { cars: {}, ids: {}, saved: {} } });
  useDraft(`debrief:${eventId}`, form);
  const fields = useWatch({ control: form.control }) as DebriefFields;
  const [open, setOpen] = useState<string | null>(
    cars.length === 1 ? (cars[0]?.carId ?? null) : null,
  );
  const [asked, setAsked] = useState(false);
  const [nothing, setNothing] = useState(false);
  const idOf = useKeptIds(form);
  const stayed = useStayed(page);
  const saving = useDebriefSaving({
    garageId: garage.id,
    form,
    shown: (carId) =>
      cars.find((car) => car.carId === carId)?.recorded.map(({ entry }) => entry) ?? [],
  });

  const fieldsOf = ({ carId, unit }: EventPage['cars'][number]): CarFields =>
    fields.cars[carId] ?? emptyCar({ unit, volumeUnit: garage.volumeUnit });

  const readOne = (car: EventPage['cars'][number]): ReadCar =>
    readCar(fieldsOf(car), {
      carId: car.carId,
      eventId,
      event,
      zone: garage.zone,
      today: garage.today,
      volumeUnit: garage.volumeUnit,
      recorded: car.recorded.map(({ entry }) => entry),
      idOf,
    });
  const read = new Map(cars.map((car) => [car.carId, readOne(car)] as const));

  async function save() {
    setAsked(true);
    const parts = [...read.values()].flatMap((one) => one.parts);
    const wrong = cars.find(({ carId }) => Object.keys(read.get(carId)?.problems ?? {}).length > 0);
    const waiting = parts.filter(({ key }) => form.getValues('saved')[key] === undefined);
    setNothing(waiting.length === 0 && wrong === undefined);
    if (wrong) setOpen(wrong.carId);
    await saving.send(waiting);
  }

  /** One line again, its question answered with "as I wrote it". */
  async function sendAgain(part: Part) {
    saving.answer(part);
    await saving.send([part]);
  }

  return (
    <Form
      label="Debrief"
      onSubmit={form.handleSubmit(save)}
      trouble={null}
      actions={
        <>
          <Button type="submit" look="main" busy={saving.busy} busyWords="Saving …">
            Save what is filled in
          </Button>
          <ButtonLink href={`/g/${garage.id}/events/${eventId}` as Route}>To the event</ButtonLink>
        </>
      }
    >
      {cars.map((car) => (
        <CarDebrief
          key={car.carId}
          page={page}
          car={car}
          fields={fieldsOf(car)}
          read={read.get(car.carId) ?? { parts: [], problems: {} }}
          saved={fields.saved}
          troubles={saving.troubles}
          stayed={stayed.includes(car.carId)}
          asked={asked}
          busy={saving.busy}
          open={open === car.carId}
          onOpen={() => setOpen(car.carId)}
          onChange={(changed) =>
            form.setValue(`cars.${car.carId}`, { ...fieldsOf(car), ...changed })
          }
          onAgain={sendAgain}
        />
      ))}
      <div aria-live="polite">
        {saving.said ? <Said said={saving.said} busy={saving.busy} /> : null}
      </div>
      {nothing ? (
        <Notice>Nothing is left to save. Say of a car whether it went, and what it did.</Notice>
      ) : null}
    </Form>
  );
}

function Said({ said: { words, undo }, busy }: { said: SavedWords; busy: boolean }) {
  return (
    <Notice
      actions={
        undo ? (
          <Button busy={busy} onClick={undo}>
            Undo
          </Button>
        ) : null
      }
    >
      {words}
    </Notice>
  );
}
