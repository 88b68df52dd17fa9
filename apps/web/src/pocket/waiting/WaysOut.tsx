'use client';

import type { RefusalCode } from '@quartermark/api/client';
import { entryInput } from '@quartermark/engine/log';
import { newId } from '../../client/make-id.ts';
import { Button, Notice } from '../../components/index.ts';
import { VersionTable } from '../../forms/BothVersions.tsx';
import { bothRows } from '../../record/entry-rows.ts';
import type { Command, EntryCommand } from '../queue/command.ts';
import { keeper } from '../queue/keeper.ts';
import { askInstead, takeOut, withEntry } from '../queue/line.ts';
import type { SheetCar } from '../sheet/pocket-sheet.ts';

type WaysOutProps = {
  command: EntryCommand;
  car: SheetCar | null;
  busy: boolean;
  act: (work: () => Promise<unknown>) => Promise<void>;
  /** opens it in its form */
  onMend: (command: EntryCommand) => void;
};

/** Refusals that are questions: "as I wrote it" answers them. */
const QUESTIONS: readonly RefusalCode[] = ['odometerBackwards', 'orderUnclear', 'looksTheSame'];

/** Why an entry was not taken, and what the person can decide. */
export function WaysOut(props: WaysOutProps) {
  const { command } = props;
  if (command.state === 'conflict') return <Conflict {...props} />;
  if (command.refusal?.code === 'removed') return <RemovedMeanwhile {...props} />;
  return <Refused {...props} />;
}

function Refused({ command, car, busy, act, onMend }: WaysOutProps) {
  const { refusal, order } = command;
  const code = refusal?.code;
  const question = QUESTIONS.find((one) => one === code);
  const again = (changed: Partial<Command>) =>
    act(() => keeper.act((db) => askInstead(db, order, newId(), () => changed)));
  return (
    <Notice
      tone="alarm"
      title={question ? 'Not saved yet: a question first.' : 'Not taken by the server.'}
      actions={
        <>
          {question && command.verb !== 'entry.remove' ? (
            <Button
              busy={busy}
              onClick={() =>
                again({
                  input: { ...command.input, confirmed: [...command.input.confirmed, question] },
                } as Partial<Command>)
              }
            >
              {question === 'looksTheSame' ? 'It happened twice, save it' : 'Save it as written'}
            </Button>
          ) : null}
          {command.verb === 'entry.remove' || car === null ? null : (
            <Button onClick={() => onMend(command)}>Open and mend</Button>
          )}
          <Button busy={busy} onClick={() => again({})}>
            Try again
          </Button>
        </>
      }
    >
      {refusal?.message}
    </Notice>
  );
}

function Conflict(props: WaysOutProps) {
  const { command, car, busy, act } = props;
  const { refusal, order, verb } = command;
  const { entry } = command.input;
  const conflict = refusal?.conflict;
  const theirs = conflict ? entryInput.safeParse(conflict.body).data : undefined;
  if (!conflict || !theirs) return <Refused {...props} />;
  const mine = () =>
    act(() =>
      keeper.act((db) =>
        askInstead(
          db,
          order,
          newId(),
          () =>
            ({ input: { ...command.input, baseRevision: conflict.revision } }) as Partial<Command>,
        ),
      ),
    );
  return (
    <Notice
      tone="alarm"
      title="Not saved: somebody saved another version meanwhile."
      actions={
        <>
          <Button busy={busy} onClick={mine}>
            {verb === 'entry.remove' ? 'Remove it all the same' : 'Keep mine on top of theirs'}
          </Button>
          <Button busy={busy} onClick={() => act(() => keeper.act((db) => takeOut(db, order)))}>
            Take theirs
          </Button>
        </>
      }
    >
      <VersionTable
        rows={bothRows(entry, theirs, car?.view.items ?? [])}
        newest={conflict}
        zone={entry.zone}
      />
    </Notice>
  );
}

/** A removed entry is not revived: what was written becomes a new one. */
function RemovedMeanwhile({ command, busy, act }: WaysOutProps) {
  const { order } = command;
  const { entry } = command.input;
  if (command.verb === 'entry.remove')
    return (
      <Notice
        tone="plain"
        title="It was removed already."
        actions={
          <Button busy={busy} onClick={() => act(() => keeper.act((db) => takeOut(db, order)))}>
            Good
          </Button>
        }
      >
        Nothing is left to do.
      </Notice>
    );
  const fresh = { ...entry, id: newId() };
  return (
    <Notice
      tone="alarm"
      title="Not saved: this entry was removed meanwhile."
      actions={
        <Button
          busy={busy}
          onClick={() =>
            act(() =>
              keeper.act((db) =>
                askInstead(
                  db,
                  order,
                  newId(),
                  (one) =>
                    ({
                      ...withEntry(one as EntryCommand, fresh),
                      verb: 'entry.record',
                      input: { entry: fresh, confirmed: [] },
                    }) as Partial<Command>,
                ),
              ),
            )
          }
        >
          Record it as a new entry
        </Button>
      }
    >
      It stays removed, and what you wrote is still here.
    </Notice>
  );
}
