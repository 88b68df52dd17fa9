'use client';

import type { GarageView } from '@quartermark/api/client';
import { addDays } from '@quartermark/engine/calendar';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { newId } from '../../client/make-id.ts';
import { useTRPC } from '../../client/trpc.ts';
import { useCommand } from '../../client/use-command.ts';
import { Button, ButtonLink, DateField } from '../../components/index.ts';
import { Form } from '../../forms/Form.tsx';
import { useSaved } from '../settings/use-saved.ts';
import { factWords } from './fact-words.ts';
import styles from './PutOff.module.css';
import { useFactNames } from './use-fact-names.ts';

/** So far ahead at most; what the api takes. */
const MOST_DAYS = 60;

type PutOffFormProps = { garage: GarageView; facts: readonly string[]; until: string | null };

/** Filled in by its address; only the press puts anything off. */
export function PutOffForm({ garage, facts, until }: PutOffFormProps) {
  const { id: garageId, today } = garage;
  const trpc = useTRPC();
  const client = useQueryClient();
  const router = useRouter();
  const saved = useSaved();
  const names = useFactNames(garageId, facts);
  const [day, setDay] = useState(until ?? addDays(today, 7));
  const add = useCommand(garageId, useMutation(trpc.putOff.add.mutationOptions()).mutateAsync);
  const remove = useMutation(trpc.putOff.remove.mutationOptions());

  async function undo() {
    for (const fact of facts) await remove.mutateAsync({ garageId, commandId: newId(), fact });
  }

  async function save() {
    if (!(await add.send({ facts: [...facts], until: day }))) return;
    const refresh = async () => {
      await client.invalidateQueries({ queryKey: trpc.putOff.pathKey() });
      await client.invalidateQueries({ queryKey: trpc.letter.pathKey() });
    };
    await saved('put-off', undo, refresh, 'Put off.');
    router.replace(`/g/${garageId}/letters/put-off` as Route);
  }

  const errors = add.trouble?.fields ?? {};
  return (
    <Form
      label="Put off"
      onSubmit={(event) => {
        event.preventDefault();
        return save();
      }}
      trouble={add.trouble}
      actions={
        <>
          <Button type="submit" look="main" busy={add.busy} busyWords="Putting it off …">
            Put it off
          </Button>
          <ButtonLink href={`/g/${garageId}/letters` as Route}>Leave it as it is</ButtonLink>
        </>
      }
    >
      <ul className={styles.about} aria-label="What is put off">
        {facts.map((fact) => (
          <li key={fact}>{names === null ? '…' : factWords(fact, names)}</li>
        ))}
      </ul>
      <DateField
        label="Silent until"
        hint="This day is the last without a word of it. If it becomes worse, the letter tells all the same."
        min={today}
        max={addDays(today, MOST_DAYS)}
        name="until"
        value={day}
        onChange={(event) => setDay(event.currentTarget.value)}
        error={errors.until}
      />
    </Form>
  );
}
