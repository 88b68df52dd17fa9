'use client';

import { useCallback, useRef, useState } from 'react';
import { newId } from './make-id.ts';
import { refusalWords, type Trouble } from './refusal-words.ts';

type Commanded = { garageId: string; commandId: string };

/**
 * Sends a command once, however often it is pressed: the id stays the same until the payload changes,
 * so a second press after "no answer" is answered and not done twice.
 *
 * `send` gives the answer, or null with `trouble` set. The trouble is cleared by the next send or by
 * `clear`.
 *
 * @example
 * const change = useMutation(trpc.garage.change.mutationOptions());
 * const command = useCommand(garageId, change.mutateAsync);
 * const written = await command.send({ baseRevision, name });
 */
export function useCommand<I extends Commanded, R>(
  garageId: string,
  mutate: (input: I) => Promise<R>,
) {
  const last = useRef<{ payload: string; commandId: string } | null>(null);
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
        setTrouble(refusalWords(error));
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
