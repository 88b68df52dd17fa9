'use client';

import { useEffect, useRef } from 'react';
import type { FieldValues, UseFormReturn } from 'react-hook-form';

/**
 * Keeps what was typed into a form until it is saved or discarded: through a reload, a way back, a
 * sign-out or a server that is down. Kept in this tab only.
 *
 * @returns forget: to call once the form was saved
 * @example const forget = useDraft(`car-add:${garageId}`, form);
 */
export function useDraft<V extends FieldValues>(key: string, form: UseFormReturn<V>): () => void {
  const forgotten = useRef(false);
  const name = `quartermark:${key}`;

  useEffect(() => {
    forgotten.current = false;
    const kept = readDraft<V>(name);
    if (kept) form.reset({ ...form.getValues(), ...kept }, { keepDefaultValues: true });
    const stop = form.subscribe({
      formState: { values: true },
      callback: ({ values }) => {
        if (!forgotten.current) writeDraft(name, values);
      },
    });
    return stop;
  }, [name, form]);

  return () => {
    forgotten.current = true;
    sessionStorage.removeItem(name);
  };
}

function readDraft<V>(name: string): V | null {
  try {
    const text = sessionStorage.getItem(name);
    return text === null ? null : (JSON.parse(text) as V);
  } catch {
    // storage switched off, or a draft of an older form: the form starts empty
    return null;
  }
}

function writeDraft(name: string, values: unknown): void {
  try {
    sessionStorage.setItem(name, JSON.stringify(values));
  } catch {
    // storage switched off or full: the form itself still holds what was typed
  }
}
