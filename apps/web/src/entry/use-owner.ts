'use client';

import type { ItemView } from '@quartermark/api/client';
import type { Flag } from '@quartermark/engine';
import { useSuspenseQuery } from '@tanstack/react-query';
import { useTRPC } from '../client/trpc.ts';

/** What an entry is about, as its page needs it. */
export type Owner = {
  /** null for what is about no car */
  carId: string | null;
  name: string | null;
  items: readonly ItemView[];
  /** in which moments are told; null: that of the entry */
  zone: string | null;
  flags: readonly Flag[];
};

/** An entry that is about the garage itself. */
export const NO_OWNER: Owner = { carId: null, name: null, items: [], zone: null, flags: [] };

export function useCarOwner(where: { garageId: string; carId: string }): Owner {
  const trpc = useTRPC();
  const { data: view } = useSuspenseQuery(trpc.car.view.queryOptions(where));
  return {
    carId: view.carId,
    name: view.car.name,
    items: view.items,
    zone: view.garage.zone,
    flags: view.analysis?.flags ?? [],
  };
}

export function useGearOwner(where: { garageId: string; gearId: string }): Owner {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.gear.view.queryOptions(where));
  const { gear, items, analysis } = data.row;
  return {
    carId: null,
    name: gear.name,
    items,
    zone: data.garage.zone,
    flags: analysis?.flags ?? [],
  };
}
