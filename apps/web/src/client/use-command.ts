'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import { newId } from './make-id.ts';
import { refusalWords, type Trouble } from './refusal-words.ts';

type Commanded = { garageId: string; commandId: string };

/**
 * Sends a command once, however often it is pressed: the id stays the same until the payload changes,
 * so a second press after "no answer" is answered and not done twice.
 *
 * `send` gives the answer, or null with `trouble` set. The trouble is cleared by the next send or by
 * `clear`. A press without a form of its own passes `onTrouble` and says it in a toast.
 *
 * @example
 * const change = useMutation(trpc.garage.change.mutationOptions());
 * const command = useCommand(garageId, change.mutateAsync);
 * const written = await command.send({ baseRevision, name });
 */
export function useCommand<I extends Commanded, R>(
  garageId: string,
  mutate: (input: I) => Promise<R>,
  onTrouble?: (trouble: Trouble) => void,
) {
  const last = useRef<{ payload: string; commandId: string } | null>(null);
  const told = useRef(onTrouble);
  useEffect(() => {
    told.current = onTrouble;
  });
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<Trouble | null>(null);

  const send = useCallback(
    async (input: Omit<I, keyof Commanded>): Promise<R | null> => {
      const payload = JSON.stringify(input);
      if (last.current?.payload !== payload) last.current = { payload, commandId: newId() };
      const { commandId } = last.current;
      setBusy(true);
      setTrouble(null);
      try {
        const answer = await mutate({ ...input, garageId, commandId } as I);
        last.current = null;
        return answer;
      } catch (error) {
        const words = refusalWords(error);
        setTrouble(words);
        told.current?.(words);
        return null;
      } finally {
        setBusy(false);
      }
    },
    [garageId, mutate],
  );

  const clear = useCallback(() => setTrouble(null), []);
  return { send, busy, trouble, clear };
}
