'use client';

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { useToast } from '../components/index.ts';

type Line = { garageId: string; eventId: string; carId: string; line: string; done: boolean };

/** A tick that is sent as it is pressed; what was pressed shows at once, and goes back if it was refused. */
export function useTick({ garageId, eventId, carId, line, done }: Line) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const toast = useToast();
  const [pressed, setPressed] = useState<boolean | null>(null);
  const count = useRef(0);
  const tick = useCommand(
    garageId,
    useMutation(trpc.event.tick.mutationOptions()).mutateAsync,
    ({ message }) => toast({ words: 'Not ticked.', detail: message, tone: 'alarm' }),
  );

  async function press(done: boolean) {
    count.current += 1;
    const mine = count.current;
    setPressed(done);
    const madeAt = new Date().toISOString();
    const sent = await tick.send({ tickId: newId(), eventId, carId, line, done, madeAt });
    if (sent) await client.invalidateQueries({ queryKey: trpc.event.pathKey() });
    // a later press shows until its own answer has come
    if (count.current === mine) setPressed(null);
  }

  return { isDone: pressed ?? done, press: (done: boolean) => void press(done) };
}
