'use client';

import { useSuspenseQuery } from '@tanstack/react-query';
import { useTRPC } from '../client/trpc.ts';
import { AddItemForm } from './AddItemForm.tsx';
import { ChangeItemForm } from './ChangeItemForm.tsx';
import { type Owned, ownedByCar } from './owned.ts';

type OfCar = { garageId: string; carId: string };

function useOwned({ garageId, carId }: OfCar): Owned {
  const trpc = useTRPC();
  const { data: view } = useSuspenseQuery(trpc.car.view.queryOptions({ garageId, carId }));
  return ownedByCar(view);
}

/** The form of a car's new item. */
export function AddCarItem(where: OfCar) {
  return <AddItemForm owned={useOwned(where)} />;
}

/** The form of an item that stands on a car's list. */
export function ChangeCarItem({ itemId, ...where }: OfCar & { itemId: string }) {
  return <ChangeItemForm owned={useOwned(where)} itemId={itemId} />;
}
