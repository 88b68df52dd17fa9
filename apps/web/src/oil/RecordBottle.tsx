'use client';

import type { CarView } from '@quartermark/api/client';
import { typedWords } from '@quartermark/engine/display';
import { useState } from 'react';
import { newId } from '../client/make-id.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, Notice } from '../components/index.ts';
import { useEntryDoor } from '../record/entry-door.ts';
import { bottleEntry, type StickRead } from './stick-fields.ts';

type RecordBottleProps = {
  around: NonNullable<StickRead['around']>;
  view: CarView;
  forget: () => void;
};

/** Records the oil that was poured in, with the levels before and after, with the way back. */
export function RecordBottle({ around, view, forget }: RecordBottleProps) {
  const door = useEntryDoor();
  const { garage, carId, car } = view;
  const record = useCommand(garage.id, door.record);
  // made once: pressed again after no answer, the same bottle is meant
  const [id] = useState(newId);
  const [done, setDone] = useState(false);

  async function save() {
    const { dipstick } = car.profile;
    const entry = bottleEntry(around, { id, car: carId, garage, dipstick });
    const sent = await record.send({ entry });
    if (!sent) return;
    setDone(true);
    forget();
    const baseRevision = sent.at === 'server' ? sent.written.revision : 1;
    const undo = () =>
      door.remove({ garageId: garage.id, commandId: newId(), entryId: id, baseRevision });
    door.away({ carId, entryId: id, sent, undo });
  }

  return (
    <>
      <Button
        busy={record.busy}
        busyWords="Saving …"
        reason={done ? 'The bottle is in the log.' : undefined}
        onClick={() => void save()}
      >
        Record the {typedWords(around.poured)} in the log
      </Button>
      {record.trouble ? <Notice tone="alarm">{record.trouble.message}</Notice> : null}
    </>
  );
}
