'use client';

import type { EntryInput } from '@quartermark/engine/log';
import { useMemo, useState } from 'react';
import { aboutCar } from '../../record/about.ts';
import { EntryForm } from '../../record/EntryForm.tsx';
import { type EntryDoor, EntryDoorContext } from '../../record/entry-door.ts';
import { fieldsOf } from '../../record/record-fields.ts';
import type { Start } from '../../record/start.ts';
import type { Command, EntryCommand } from '../queue/command.ts';
import { keeper } from '../queue/keeper.ts';
import { askInstead } from '../queue/line.ts';
import { storeTrouble } from '../queue/store.ts';
import type { SheetCar } from '../sheet/pocket-sheet.ts';

type MendWaitingProps = { command: EntryCommand; car: SheetCar; onDone: () => void };

/** What the server did not take, in its form, exactly as it was written; saved, it goes back into the line. */
export function MendWaiting({ command, car, onDone }: MendWaitingProps) {
  const { view } = car;
  // what the form was opened with: the line may change while it is open
  const [opened] = useState(command);
  const { order } = opened;
  const { entry } = opened.input;
  const [start] = useState<Start>(() => ({
    entryId: entry.id,
    today: view.garage.today,
    unit: view.car.unit,
    volumeUnit: view.garage.volumeUnit,
    last: null,
  }));
  const door = useMemo((): EntryDoor => {
    const never = () => Promise.reject(new Error('a waiting entry is only mended here'));
    return {
      record: never,
      remove: never,
      amend: async ({ commandId, entry: mended, confirmed }) => {
        await keeper
          .act((db) =>
            askInstead(db, order, commandId, (one) =>
              mendedWith(one, mended as EntryInput, confirmed),
            ),
          )
          .catch((error: unknown) => {
            throw Object.assign(new Error(storeTrouble(error)), { data: { refusal: null } });
          });
        return { at: 'device', undo: () => Promise.resolve() };
      },
      standing: () => Promise.resolve(null),
      away: () => {},
    };
  }, [order]);
  return (
    <EntryDoorContext value={door}>
      <h1>Mend it, and it is sent again.</h1>
      <EntryForm
        about={aboutCar(view)}
        kind={entry.kind}
        base={entry}
        start={start}
        initial={fieldsOf(entry, 1, start)}
        draft={`waiting:${entry.id}`}
        last={null}
        onDone={onDone}
        onLeave={onDone}
      />
    </EntryDoorContext>
  );
}

function mendedWith(
  command: Command,
  entry: EntryInput,
  confirmed: readonly string[] | undefined,
): Partial<Command> {
  return { input: { ...command.input, entry, confirmed: confirmed ?? [] } } as Partial<Command>;
}
