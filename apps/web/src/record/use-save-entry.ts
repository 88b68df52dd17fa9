'use client';

import type { EntryView } from '@quartermark/api/client';
import type { EntryInput } from '@quartermark/engine/log';
import { useRef } from 'react';
import { newId } from '../client/make-id.ts';
import type { Trouble } from '../client/refusal-words.ts';
import { useCommand } from '../client/use-command.ts';
import type { About } from './about.ts';
import { asksItself, QUESTIONS, type Question, subjectOf } from './asked.ts';
import { type Sent, useEntryDoor } from './entry-door.ts';
import { rememberCar } from './last-car.ts';

type Amends = { standing: EntryInput; baseRevision: number };
type Sending = {
  about: About;
  /** lets go of what is kept of the form */
  forget: () => void;
  /** where to go once it is saved */
  onDone: () => void;
};

/**
 * Sends an entry, new or amended, through the page's door; says that it was saved, with the way back.
 *
 * An entry that reached the server though its answer was lost is found by its id: it is the form's own,
 * so what stands in the form now amends it, and nothing is written twice.
 */
export function useSaveEntry({ about, forget, onDone }: Sending) {
  const { garage, carId } = about;
  const garageId = garage.id;
  const door = useEntryDoor();
  const refused = useRef<Trouble | null>(null);
  const note = (trouble: Trouble) => {
    refused.current = trouble;
  };
  const record = useCommand(garageId, door.record, note);
  const amend = useCommand(garageId, door.amend, note);
  const answers = useRef<Partial<Record<Question, string>>>({});

  const confirmed = (entry: EntryInput) =>
    QUESTIONS.filter((question) => answers.current[question] === subjectOf(question, entry));

  function done(entryId: string, sent: Sent, undo: () => Promise<unknown>) {
    forget();
    if (carId !== null) rememberCar(garageId, carId);
    door.away({ carId, entryId, sent, undo });
    if (sent.at === 'server' || !sent.stay) onDone();
  }

  async function recordNew(entry: EntryInput) {
    const sent = await record.send({ entry, confirmed: confirmed(entry) });
    if (sent) return recorded(entry.id, sent);
    if (refused.current?.refusal?.code !== 'idInUse') return;
    const there = await door.standing(garageId, entry.id);
    if (there === null) return;
    record.clear();
    await amendOwn(entry, there);
  }

  /** Amended even if nothing differs: the server's answer is what "Saved." rests on. */
  async function amendOwn(entry: EntryInput, { revision: baseRevision }: EntryView) {
    const asked = { entryId: entry.id, baseRevision, entry, confirmed: confirmed(entry) };
    const sent = await amend.send(asked);
    if (sent) recorded(entry.id, sent);
  }

  function recorded(entryId: string, sent: Sent) {
    const baseRevision = sent.at === 'server' ? sent.written.revision : 1;
    const undoing = { garageId, commandId: newId(), entryId, baseRevision };
    done(entryId, sent, () => door.remove(undoing));
  }

  async function amendStanding(entry: EntryInput, { standing, baseRevision }: Amends) {
    const entryId = entry.id;
    const asked = { entryId, baseRevision, entry, confirmed: confirmed(entry) };
    const sent = await amend.send(asked);
    if (!sent) return;
    const undoing = {
      garageId,
      commandId: newId(),
      entryId,
      baseRevision: sent.at === 'server' ? sent.written.revision : baseRevision + 1,
      entry: standing,
      confirmed: [...QUESTIONS],
    };
    done(entryId, sent, () => door.amend(undoing));
  }

  const trouble = record.trouble ?? amend.trouble;
  return {
    /** @param amends what stands, for an amendment; null for a new entry */
    save: (entry: EntryInput, amends: Amends | null) =>
      amends ? amendStanding(entry, amends) : recordNew(entry),
    /** Notes that a question was answered with "as I wrote it"; the next `save` says so. */
    answer: (question: Question, entry: EntryInput) => {
      answers.current[question] = subjectOf(question, entry);
    },
    busy: record.busy || amend.busy,
    trouble,
    /** the refusal is shown with its ways out */
    asksItself: asksItself(trouble),
    clear: () => {
      record.clear();
      amend.clear();
    },
  };
}
