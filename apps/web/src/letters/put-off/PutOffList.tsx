'use client';

import type { GarageView, PutOffRow } from '@quartermark/api/client';
import { weekdayAhead } from '@quartermark/engine/display';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { newId } from '../../client/make-id.ts';
import { useTRPC } from '../../client/trpc.ts';
import { useCommand } from '../../client/use-command.ts';
import { Button, useToast } from '../../components/index.ts';
import { useSaved } from '../settings/use-saved.ts';
import { factWords } from './fact-words.ts';
import styles from './PutOff.module.css';
import { useFactNames } from './use-fact-names.ts';

type PutOffListProps = { garage: GarageView; rows: readonly PutOffRow[] };

/** What is put off, each with the way back. */
export function PutOffList({ garage, rows }: PutOffListProps) {
  const names = useFactNames(
    garage.id,
    rows.map(({ fact }) => fact),
  );
  if (rows.length === 0)
    return (
      <p className={styles.none}>
        A letter’s “After Saturday” brings you here. What became overdue or due soon can be put off
        for up to 60 days; what forbids driving cannot.
      </p>
    );
  return (
    <section aria-label="Put off already" className={styles.section}>
      <h2>Put off already</h2>
      <ul className={styles.list}>
        {rows.map((row) => (
          <Row
            key={row.fact}
            row={row}
            garage={garage}
            words={names === null ? '…' : factWords(row.fact, names)}
          />
        ))}
      </ul>
    </section>
  );
}

type RowProps = { row: PutOffRow; garage: GarageView; words: string };

function Row({ row: { fact, until }, garage, words }: RowProps) {
  const { id: garageId, today } = garage;
  const trpc = useTRPC();
  const client = useQueryClient();
  const toast = useToast();
  const saved = useSaved();
  const add = useMutation(trpc.putOff.add.mutationOptions());
  const remove = useCommand(
    garageId,
    useMutation(trpc.putOff.remove.mutationOptions()).mutateAsync,
    ({ message }) =>
      toast({ id: `put-off:${fact}`, tone: 'alarm', words: 'Not taken back.', detail: message }),
  );

  async function press() {
    if (!(await remove.send({ fact }))) return;
    const again = () => add.mutateAsync({ garageId, commandId: newId(), facts: [fact], until });
    const refresh = async () => {
      await client.invalidateQueries({ queryKey: trpc.putOff.pathKey() });
      await client.invalidateQueries({ queryKey: trpc.letter.pathKey() });
    };
    await saved('put-off', again, refresh, 'Letters speak of it again.');
  }

  return (
    <li className={styles.row}>
      <div>
        <p>{words}</p>
        <p className={styles.soft}>Silent until {weekdayAhead(until, { asOf: today })}.</p>
      </div>
      <Button
        busy={remove.busy}
        busyWords="Taking it back …"
        onClick={press}
        aria-label={`Speak of it again: ${words}`}
      >
        Speak of it again
      </Button>
    </li>
  );
}
