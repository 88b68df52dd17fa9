'use client';

import { type CarInput, carInput } from '@quartermark/engine/log';
import { useMutation, useSuspenseQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button } from '../components/index.ts';
import { Form } from '../forms/Form.tsx';
import { TwoVersions } from '../forms/TwoVersions.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import { ownedByCar } from '../items/owned.ts';
import { useWritten } from '../items/use-written.ts';
import { versionRows } from '../items/version-rows.ts';
import { CarParts } from './CarParts.tsx';
import { type CarFields, carFields, readCar } from './car-fields.ts';
import { carLines } from './car-lines.ts';

type ChangeCarFormProps = { garageId: string; carId: string };

/** Changes what is known of a car. What others save meanwhile is never overwritten unseen. */
export function ChangeCarForm({ garageId, carId }: ChangeCarFormProps) {
  const trpc = useTRPC();
  const { data: view } = useSuspenseQuery(trpc.car.view.queryOptions({ garageId, carId }));
  // what the form was opened with: it stays the same while the page is kept up to date
  const [opened] = useState(view);
  const form = useForm<CarFields>({ defaultValues: carFields(opened.car, opened.revision) });
  const forget = useDraft(`car:${carId}`, form);
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, readCar);
  const { mutateAsync } = useMutation(trpc.car.change.mutationOptions());
  const change = useCommand(garageId, mutateAsync);
  const { written, toOwner } = useWritten(ownedByCar(view));
  const conflict = change.trouble?.refusal?.conflict;
  const newest = conflict ? carInput.safeParse(conflict.body).data : undefined;

  /** @param before what this change is put on top of, to go back to */
  async function save(fields: CarFields, before: CarInput) {
    const read = readCar(fields);
    setAsked(true);
    if ('problems' in read) return change.clear();
    const { baseRevision } = fields;
    const saved = await change.send({ carId, baseRevision, car: read.car });
    if (!saved) return;
    forget();
    const undoing = { garageId, carId, baseRevision: saved.revision, car: before };
    const commandId = newId();
    await written(saved, () => mutateAsync({ ...undoing, commandId }));
  }

  const trouble = wrong ?? change.trouble;
  const both =
    conflict && newest ? (
      <TwoVersions
        rows={versionRows(mineLines(form.getValues()), carLines(newest))}
        conflict={conflict}
        zone={view.garage.zone}
        change={change}
        onNewest={() => form.reset(carFields(newest, conflict.revision))}
        onRest={() => form.setValue('baseRevision', conflict.revision)}
        onSave={() => save(form.getValues(), newest)}
      />
    ) : null;

  return (
    <Form
      label="Change the car"
      onSubmit={form.handleSubmit((fields) => save(fields, opened.car))}
      trouble={both ? null : trouble}
      actions={
        <>
          <Button type="submit" look="main" busy={change.busy} busyWords="Saving …">
            Save the car
          </Button>
          <Button
            onClick={() => {
              forget();
              toOwner();
            }}
          >
            Leave without saving
          </Button>
        </>
      }
    >
      <CarParts form={form} errors={trouble?.fields ?? {}} />
      {both}
    </Form>
  );
}

/** What stands in the form, in words; it was readable when it was sent. */
function mineLines(fields: CarFields) {
  const read = readCar(fields);
  const car = 'car' in read ? carInput.safeParse(read.car).data : undefined;
  return car ? carLines(car) : [];
}
