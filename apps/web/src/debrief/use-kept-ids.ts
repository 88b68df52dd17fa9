'use client';

import type { UseFormReturn } from 'react-hook-form';
import { useIds } from '../client/use-ids.ts';
import type { DebriefFields } from './debrief-fields.ts';

/** Ids made once and kept with the draft, so that a reload cannot write a line twice. */
export function useKeptIds(form: UseFormReturn<DebriefFields>): (key: string) => string {
  const fresh = useIds();
  return (key) => form.getValues('ids')[key] ?? fresh(key);
}
