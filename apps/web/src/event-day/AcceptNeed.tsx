'use client';

import type { EventPage } from '@quartermark/api/client';
import { whyNotAccepted } from '@quartermark/engine/display';
import type { Accepted, Need } from '@quartermark/engine/readiness';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, Notice } from '../components/index.ts';
import { AcceptForm } from './AcceptForm.tsx';
import styles from './AcceptNeed.module.css';
import type { ReadCar } from './of-page.ts';
import { takenOnWords } from './TakenOn.tsx';

type AcceptNeedProps = { need: Need; car: ReadCar; page: EventPage };

/** Taking a need upon oneself, taking that back, or why nobody may. Absent where it is met. */
export function AcceptNeed({ need, car, page }: AcceptNeedProps) {
  const [open, setOpen] = useState(false);
  const { accepted } = need;
  if (accepted) return <Taken accepted={accepted} need={need} page={page} />;
  const refused = whyNotAccepted(need);
  if (refused !== null) return <p className={styles.soft}>{refused}</p>;
  if (!need.mayAccept) return null;
  if (!open)
    return (
      <Button
        look="quiet"
        aria-label={`Take this upon yourself: ${need.title}, ${car.name}`}
        onClick={() => setOpen(true)}
      >
        Take this upon yourself
      </Button>
    );
  return <AcceptForm need={need} carId={car.carId} page={page} onClose={() => setOpen(false)} />;
}

type TakenProps = { accepted: Accepted; need: Need; page: EventPage };

function Taken({ accepted, need, page }: TakenProps) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const withdraw = useCommand(
    page.garage.id,
    useMutation(trpc.event.withdraw.mutationOptions()).mutateAsync,
  );
  async function press() {
    const { acceptanceId } = accepted;
    if (await withdraw.send({ acceptanceId }))
      await client.invalidateQueries({ queryKey: trpc.event.pathKey() });
  }
  return (
    <div className={styles.taken}>
      <p>{takenOnWords(accepted, page.garage.today)}.</p>
      {withdraw.trouble ? <Notice tone="alarm">{withdraw.trouble.message}</Notice> : null}
      <Button
        aria-label={`Withdraw it: ${need.title}`}
        busy={withdraw.busy}
        busyWords="Withdrawing …"
        onClick={press}
      >
        Withdraw it
      </Button>
    </div>
  );
}
