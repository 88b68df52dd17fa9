'use client';

import { carInput } from '@quartermark/engine/log';
import { useMutation, useSuspenseQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useTRPC } from '../client/trpc.ts';
import { ChangeForm } from '../forms/ChangeForm.tsx';
import { useChange } from '../forms/use-change.tsx';
import { ownedByCar } from '../items/owned.ts';
import { useWritten } from '../items/use-written.ts';
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
  const { mutateAsync } = useMutation(trpc.car.change.mutationOptions());
  const { written, toOwner } = useWritten(ownedByCar(view));
  const change = useChange({
    garage: view.garage,
    draft: `car:${carId}`,
    opened: { body: opened.car, revision: opened.revision },
    fieldsOf: carFields,
    read,
    schema: carInput,
    lines: carLines,
    send: (body, on) => mutateAsync({ ...on, carId, car: body }),
    after: written,
  });
  return (
    <ChangeForm label="Change the car" change={change} saveWords="Save the car" onLeave={toOwner}>
      <CarParts form={change.form} errors={change.errors} />
    </ChangeForm>
  );
}

function read(fields: CarFields) {
  const found = readCar(fields);
  return 'car' in found ? { body: found.car } : found;
}
