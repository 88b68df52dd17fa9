'use client';

import type { FailureView, GarageView } from '@quartermark/api/client';
import { useMutation } from '@tanstack/react-query';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, useToast } from '../components/index.ts';
import { momentWords } from './moment-words.ts';
import styles from './NotUpdated.module.css';

type NotUpdatedProps = { failure: FailureView; carId: string; garage: GarageView };

/** A recomputation that failed for good: since when, why, and the way to try again. */
export function NotUpdated({ failure, carId, garage }: NotUpdatedProps) {
  const trpc = useTRPC();
  const toast = useToast();
  const retry = useMutation(trpc.work.retry.mutationOptions());
  const { send, busy } = useCommand(garage.id, retry.mutateAsync, (trouble) =>
    toast({ words: 'It could not be asked for.', detail: trouble.message, tone: 'alarm' }),
  );
  async function again() {
    if (await send({ carId }))
      toast({ words: 'Asked for again.', detail: 'The row changes when it is done.' });
  }
  return (
    <div className={styles.failed}>
      <p>
        Not updated since {momentWords(failure.since, garage.zone)}, because {failure.cause}
        {/[.!?]$/.test(failure.cause) ? '' : '.'} What was recorded is kept.
      </p>
      <Button onClick={again} busy={busy} busyWords="Asking …">
        Retry
      </Button>
    </div>
  );
}
