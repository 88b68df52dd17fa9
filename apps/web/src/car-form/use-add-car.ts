'use client';

import type { GarageView } from '@quartermark/api/client';
import type { CarDraft } from '@quartermark/engine/log';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';

/** The first reading of a new car's odometer, as typed; its unit is the car's. */
export type ReadingFields = { text: string; on: string };

/**
 * Adds a car, then its first odometer reading: two commands. Their ids are made once, so pressing again
 * after a refused reading, or after no answer, does only what is still to be done.
 *
 * @param onCarSaved called once the car is in the garage, before its reading is sent
 */
export function useAddCar(garage: GarageView, onCarSaved: () => void) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const ids = useRef<{ carId: string; entryId: string } | null>(null);
  const [savedCarId, setSavedCarId] = useState<string | null>(null);
  const car = useCommand(garage.id, useMutation(trpc.car.add.mutationOptions()).mutateAsync);
  const entry = useCommand(garage.id, useMutation(trpc.entry.record.mutationOptions()).mutateAsync);

  async function add(draft: CarDraft, reading: ReadingFields): Promise<string | null> {
    ids.current ??= { carId: newId(), entryId: newId() };
    const { carId, entryId } = ids.current;
    if (savedCarId === null) {
      if (!(await car.send({ carId, car: draft }))) return null;
      setSavedCarId(carId);
      onCarSaved();
    }
    if (reading.text.trim() !== '') {
      const read = {
        kind: 'odometer' as const,
        id: entryId,
        car: carId,
        on: reading.on,
        zone: garage.zone,
        odometer: { text: reading.text, unit: draft.unit },
      };
      if (!(await entry.send({ entry: read }))) return null;
    }
    await client.invalidateQueries({ queryKey: trpc.garage.pathKey() });
    return carId;
  }

  return {
    add,
    busy: car.busy || entry.busy,
    trouble: car.trouble ?? entry.trouble,
    savedCarId,
    clear: () => {
      car.clear();
      entry.clear();
    },
  };
}
