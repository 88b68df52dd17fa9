'use client';

import type { EventPage } from '@quartermark/api/client';
import type { Need } from '@quartermark/engine/readiness';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { useIds } from '../client/use-ids.ts';
import { Button, Notice, TextField } from '../components/index.ts';
import styles from './AcceptNeed.module.css';

type AcceptFormProps = { need: Need; carId: string; page: EventPage; onClose: () => void };

/** Asks why somebody takes a need upon himself; nothing is taken without a reason. */
export function AcceptForm({ need, carId, page, onClose }: AcceptFormProps) {
  const [because, setBecause] = useState('');
  const [asked, setAsked] = useState(false);
  const trpc = useTRPC();
  const client = useQueryClient();
  const idOf = useIds();
  const accept = useCommand(
    page.garage.id,
    useMutation(trpc.event.accept.mutationOptions()).mutateAsync,
  );
  const missing =
    asked && because.trim() === '' ? 'Say why; it stays beside the verdict.' : undefined;
  const { trouble } = accept;
  const atField = trouble?.fields['acceptance.because'];

  async function save() {
    setAsked(true);
    if (because.trim() === '') return;
    const written = await accept.send({
      acceptanceId: idOf('acceptance'),
      acceptance: {
        event: page.event.eventId,
        car: carId,
        need: need.id,
        because: because.trim(),
      },
    });
    if (written) await client.invalidateQueries({ queryKey: trpc.event.pathKey() });
  }

  return (
    <form
      className={styles.form}
      aria-label={`Take upon yourself: ${need.title}`}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <TextField
        label="Because"
        hint={
          need.weight === 'blocking'
            ? 'It then no longer holds the car back at this event. Your name, the day and this reason stay beside the verdict.'
            : 'Your name, the day and this reason stay beside the verdict.'
        }
        autoComplete="off"
        maxLength={200}
        value={because}
        error={atField ?? missing}
        onChange={(event) => setBecause(event.currentTarget.value)}
      />
      {trouble && atField === undefined ? <Notice tone="alarm">{trouble.message}</Notice> : null}
      <div className={styles.presses}>
        <Button type="submit" busy={accept.busy} busyWords="Saving …">
          Take it upon yourself
        </Button>
        <Button look="quiet" onClick={onClose}>
          Not now
        </Button>
      </div>
    </form>
  );
}
