'use client';

import type { CarView } from '@quartermark/api/client';
import type { LearntSpan } from '@quartermark/engine/oil';
import { useMutation } from '@tanstack/react-query';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, Notice } from '../components/index.ts';
import { ownedByCar } from '../items/owned.ts';
import { useWritten } from '../items/use-written.ts';

/** Writes the litres between the marks into what is known of the car, with the way back. */
export function KeepSpan({ learnt, view }: { learnt: LearntSpan; view: CarView }) {
  const trpc = useTRPC();
  const { mutateAsync } = useMutation(trpc.car.change.mutationOptions());
  const { stay, refresh } = useWritten(ownedByCar(view));
  const change = useCommand(view.garage.id, mutateAsync);
  const { car, carId, revision } = view;
  const oilSpanL = Math.round(learnt.likelyL * 100) / 100;
  const kept = car.profile.oilSpanL === oilSpanL;

  async function keep() {
    const saved = await change.send({
      carId,
      baseRevision: revision,
      car: { ...car, profile: { ...car.profile, oilSpanL } },
    });
    // somebody changed the car meanwhile: with the newest at hand it can be pressed again
    if (!saved) return refresh();
    const undoing = { garageId: view.garage.id, carId, baseRevision: saved.revision, car };
    await stay(saved, () => mutateAsync({ ...undoing, commandId: newId() }));
  }

  return (
    <>
      <Button
        look="main"
        busy={change.busy}
        busyWords="Saving …"
        reason={kept ? `${oilSpanL} L is on record for this car.` : undefined}
        onClick={() => void keep()}
      >
        Keep {oilSpanL} L for this car
      </Button>
      {change.trouble ? (
        <Notice tone="alarm">{change.trouble.message} The newest is shown now; press again.</Notice>
      ) : null}
    </>
  );
}
