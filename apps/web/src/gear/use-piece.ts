'use client';

import { useSuspenseQuery } from '@tanstack/react-query';
import { useTRPC } from '../client/trpc.ts';
import { ownedByGear } from './owned-by-gear.ts';

export type PieceWhere = { garageId: string; gearId: string };

/** One set, tool or person, and the same as an owner of items. */
export function usePiece(where: PieceWhere) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.gear.view.queryOptions(where));
  return { ...data, owned: ownedByGear(data.garage, data.row) };
}
