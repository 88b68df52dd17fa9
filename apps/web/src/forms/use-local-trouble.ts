'use client';

import { type FieldValues, type UseFormReturn, useWatch } from 'react-hook-form';
import type { Trouble } from '../client/refusal-words.ts';

type Read = { problems: Record<string, string> } | object;

/**
 * What is wrong with a form's fields before anything is sent, in the form in which the server would have
 * said it; null where nothing is. Once it was asked for, it goes with what is typed, so that a mended
 * field is no longer called wrong.
 *
 * @param asked false until the form was first sent off
 * @param read reads the form's fields, or gives what is wrong with them
 */
export function useLocalTrouble<V extends FieldValues>(
  form: UseFormReturn<V>,
  asked: boolean,
  read: (fields: V) => Read,
): Trouble | null {
  useWatch({ control: form.control, disabled: !asked });
  if (!asked) return null;
  const found = read(form.getValues());
  if (!('problems' in found)) return null;
  const [message = ''] = Object.values(found.problems);
  return { place: 'field', fields: found.problems, message, refusal: null };
}
