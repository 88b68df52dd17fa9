'use client';

import { type EntryInput, looksTheSame } from '@quartermark/engine/log';
import { useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import type { UseFormReturn } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { refusalWords, type Trouble } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { QUESTIONS, type Question, questionOf, subjectOf } from '../record/asked.ts';
import { type Sent, useEntryDoor } from '../record/entry-door.ts';
import type { DebriefFields, SavedPart } from './debrief-fields.ts';
import type { Part } from './debrief-parts.ts';

export type SavedWords = { words: string; undo?: () => Promise<void> };

type Sending = {
  garageId: string;
  form: UseFormReturn<DebriefFields>;
  /** uses that the page shows as on record already: one more like it was meant as one more */
  shown: (carId: string) => readonly EntryInput[];
};

/**
 * Sends the lines of a debrief one after the other, each an entry of its own. What was saved is noted in
 * the form and never sent again; what was refused stays with its reason. A line sent again after no answer
 * is the same command, and one that arrived after all is amended, so nothing is written twice.
 */
export function useDebriefSaving({ garageId, form, shown }: Sending) {
  const door = useEntryDoor();
  const trpc = useTRPC();
  const client = useQueryClient();
  const [busy, setBusy] = useState(false);
  const [said, setSaid] = useState<SavedWords | null>(null);
  const [troubles, setTroubles] = useState<Readonly<Record<string, Trouble>>>({});
  const commands = useRef(new Map<string, { payload: string; commandId: string }>());
  const answers = useRef(new Map<string, string>());

  function confirmed(key: string, entry: EntryInput): Question[] {
    return QUESTIONS.filter(
      (question) =>
        answers.current.get(`${key}:${question}`) === subjectOf(question, entry) ||
        (question === 'looksTheSame' &&
          shown(entry.car ?? '').some((there) => looksTheSame(entry, there))),
    );
  }

  /** The same id as long as the same is meant. */
  function commandId(key: string, asked: object): string {
    const payload = JSON.stringify(asked);
    const last = commands.current.get(key);
    if (last?.payload === payload) return last.commandId;
    const made = { payload, commandId: newId() };
    commands.current.set(key, made);
    return made.commandId;
  }

  async function record({ key, entry }: Part): Promise<Sent> {
    const asked = { entry, confirmed: confirmed(key, entry) };
    // kept with what was typed, so that a reload cannot write the line a second time
    form.setValue('ids', { ...form.getValues('ids'), [key]: entry.id });
    try {
      return await door.record({ garageId, commandId: commandId(key, asked), ...asked });
    } catch (error) {
      if (refusalWords(error).refusal?.code !== 'idInUse') throw error;
      const there = await door.standing(garageId, entry.id);
      if (there === null) throw error;
      const amending = { entryId: entry.id, baseRevision: there.revision, ...asked };
      return door.amend({ garageId, commandId: commandId(`${key}:amend`, amending), ...amending });
    }
  }

  /** Stops at the first that got no answer. */
  async function send(parts: readonly Part[]): Promise<void> {
    setBusy(true);
    setSaid(null);
    const refused: Record<string, Trouble> = {};
    const undoing: (() => Promise<unknown>)[] = [];
    const done: Part[] = [];
    for (const part of parts) {
      if (form.getValues('saved')[part.key]) continue;
      try {
        const sent = await record(part);
        noteSaved(part, sent);
        undoing.unshift(() => takeBack(part, sent));
        done.push(part);
      } catch (error) {
        const trouble = refusalWords(error);
        refused[part.key] = trouble;
        if (trouble.refusal === null) break;
      }
    }
    setTroubles(refused);
    if (done.length > 0) {
      sayIt(done, undoing);
      await refresh(done);
    }
    setBusy(false);
  }

  function noteSaved({ key, entry }: Part, sent: Sent): void {
    const revision = sent.at === 'server' ? sent.written.revision : 1;
    const saved: SavedPart = { entryId: entry.id, revision, at: sent.at };
    form.setValue('saved', { ...form.getValues('saved'), [key]: saved });
  }

  /** A removed entry stays removed: the line is another entry if it is saved again. */
  async function takeBack({ key, entry }: Part, sent: Sent): Promise<void> {
    if (sent.at === 'device') await sent.undo();
    else
      await door.remove({
        garageId,
        commandId: newId(),
        entryId: entry.id,
        baseRevision: sent.written.revision,
      });
    const { [key]: _gone, ...saved } = form.getValues('saved');
    form.setValue('saved', saved);
    form.setValue('ids', { ...form.getValues('ids'), [key]: newId() });
  }

  /** Said on the page itself: a line at the foot of a phone would lie over the button that saves the rest. */
  function sayIt(done: readonly Part[], undoing: readonly (() => Promise<unknown>)[]): void {
    const undo = async () => {
      setBusy(true);
      try {
        for (const one of undoing) await one();
        setSaid({ words: 'Undone.' });
      } catch (error) {
        setSaid({ words: `Not all of it is undone. ${refusalWords(error).message}` });
      }
      await refresh(done);
      setBusy(false);
    };
    const words = done.length === 1 ? 'Saved: one entry.' : `Saved: ${done.length} entries.`;
    setSaid({ words: `${words} The figures follow.`, undo });
  }

  async function refresh(done: readonly Part[]): Promise<void> {
    const cars = new Set(done.flatMap(({ entry }) => entry.car ?? []));
    for (const carId of cars)
      void client.invalidateQueries({ queryKey: trpc.car.view.queryKey({ garageId, carId }) });
    for (const path of [trpc.garage.overview, trpc.gear, trpc.entry])
      void client.invalidateQueries({ queryKey: path.pathKey() });
    await client.invalidateQueries({ queryKey: trpc.event.pathKey() });
  }

  return {
    send,
    busy,
    /** what was saved by the last press, with the way back */
    said,
    /** what the server said of a line, by its key */
    troubles,
    /** Notes that a question about a line was answered with "as I wrote it". */
    answer: ({ key, entry }: Part) => {
      const question = questionOf(troubles[key] ?? null);
      if (question) answers.current.set(`${key}:${question}`, subjectOf(question, entry));
    },
  };
}
