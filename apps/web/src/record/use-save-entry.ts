'use client';

import type { CarView, EntryView, Written } from '@quartermark/api/client';
import { canonicalJson, type EntryInput } from '@quartermark/engine/log';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useRef } from 'react';
import { useAfterSave } from '../client/AfterSave.tsx';
import { newId } from '../client/make-id.ts';
import type { Trouble } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { rememberCar } from './last-car.ts';

/** Questions that are answered by "as I wrote it". */
export type Question = 'odometerBackwards' | 'orderUnclear';

/** What a question is about: an answer holds as long as that stays the same. */
function about(question: Question, entry: EntryInput): string {
  const until = entry.kind === 'drive' ? entry.until : null;
  return question === 'odometerBackwards'
    ? canonicalJson([entry.on, until, entry.odometer])
    : canonicalJson([entry.on, entry.time, entry.dayOrder]);
}

type Amends = { standing: EntryInput; baseRevision: number };

/**
 * Sends an entry, new or amended; says that it was saved, with the way back, and opens the car.
 *
 * An entry that reached the server though its answer was lost is found by its id: it is the form's own,
 * so what stands in the form now amends it, and nothing is written twice.
 */
export function useSaveEntry(view: CarView, forget: () => void) {
  const { garage, carId } = view;
  const garageId = garage.id;
  const trpc = useTRPC();
  const client = useQueryClient();
  const router = useRouter();
  const afterSave = useAfterSave();
  const { mutateAsync: recording } = useMutation(trpc.entry.record.mutationOptions());
  const { mutateAsync: amending } = useMutation(trpc.entry.amend.mutationOptions());
  const { mutateAsync: removing } = useMutation(trpc.entry.remove.mutationOptions());
  const refused = useRef<Trouble | null>(null);
  const note = (trouble: Trouble) => {
    refused.current = trouble;
  };
  const record = useCommand(garageId, recording, note);
  const amend = useCommand(garageId, amending, note);
  const answers = useRef<Partial<Record<Question, string>>>({});

  const confirmed = (entry: EntryInput) =>
    (['odometerBackwards', 'orderUnclear'] as const).filter(
      (question) => answers.current[question] === about(question, entry),
    );

  async function done(written: Written, undo: () => Promise<unknown>) {
    forget();
    rememberCar(garageId, carId);
    const refresh = async () => {
      await client.invalidateQueries({ queryKey: trpc.car.view.queryKey({ garageId, carId }) });
      void client.invalidateQueries({ queryKey: trpc.garage.overview.pathKey() });
    };
    const { id: entryId, revision, version } = written;
    const back = async () => {
      await undo();
      await refresh();
    };
    afterSave({ carId, entryId, revision, version, undo: back });
    void refresh();
    router.push(`/g/${garageId}/car/${carId}` as Route);
  }

  async function recordNew(entry: EntryInput) {
    const written = await record.send({ entry, confirmed: confirmed(entry) });
    if (written) return recorded(written);
    if (refused.current?.refusal?.code !== 'idInUse') return;
    const there = await client
      .fetchQuery({
        ...trpc.entry.one.queryOptions({ garageId, entryId: entry.id }),
        staleTime: 0,
      })
      // unreachable again: what was said stands, and the next press asks once more
      .catch(() => null);
    if (there === null) return;
    record.clear();
    await amendOwn(entry, there);
  }

  /** Amended even if nothing differs: the server's answer is what "Saved." rests on. */
  async function amendOwn(entry: EntryInput, there: EntryView) {
    const { revision: baseRevision } = there;
    const entryId = entry.id;
    const written = await amend.send({
      entryId,
      baseRevision,
      entry,
      confirmed: confirmed(entry),
    });
    if (written) await recorded(written);
  }

  function recorded(written: Written) {
    const { id: entryId, revision: baseRevision } = written;
    const undoing = { garageId, commandId: newId(), entryId, baseRevision };
    return done(written, () => removing(undoing));
  }

  async function amendStanding(entry: EntryInput, { standing, baseRevision }: Amends) {
    const entryId = entry.id;
    const sent = { entryId, baseRevision, entry, confirmed: confirmed(entry) };
    const written = await amend.send(sent);
    if (!written) return;
    const undoing = {
      garageId,
      commandId: newId(),
      entryId,
      baseRevision: written.revision,
      entry: standing,
      confirmed: ['odometerBackwards' as const, 'orderUnclear' as const],
    };
    await done(written, () => amending(undoing));
  }

  return {
    /** @param amends what stands, for an amendment; null for a new entry */
    save: (entry: EntryInput, amends: Amends | null) =>
      amends ? amendStanding(entry, amends) : recordNew(entry),
    /** Notes that a question was answered with "as I wrote it"; the next `save` says so. */
    answer: (question: Question, entry: EntryInput) => {
      answers.current[question] = about(question, entry);
    },
    busy: record.busy || amend.busy,
    trouble: record.trouble ?? amend.trouble,
    clear: () => {
      record.clear();
      amend.clear();
    },
  };
}
