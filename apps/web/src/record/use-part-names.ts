'use client';

import type { Names } from '@quartermark/engine/display';
import type { EntryInput } from '@quartermark/engine/log';
import { useQuery } from '@tanstack/react-query';
import { useTRPC } from '../client/trpc.ts';

const NONE: Names = {};

/** The names of the garage's components, asked for where one of the entries speaks of a component. */
export function usePartNames(garageId: string, ...entries: readonly EntryInput[]): Names {
  const trpc = useTRPC();
  const { data } = useQuery({
    ...trpc.gear.list.queryOptions({ garageId }),
    enabled: entries.some(namesPart),
  });
  return data ? Object.fromEntries(data.rows.map(({ gearId, gear }) => [gearId, gear.name])) : NONE;
}

function namesPart(entry: EntryInput): boolean {
  if (entry.kind === 'session') return entry.tyreSet !== undefined;
  if (entry.kind === 'measure') return entry.component !== undefined;
  return entry.kind === 'fit';
}
