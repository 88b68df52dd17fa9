'use client';

import type { Written } from '@quartermark/api/client';
import { useState } from 'react';
import {
  type DefaultValues,
  type FieldValues,
  type Path,
  type PathValue,
  useForm,
} from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { useCommand } from '../client/use-command.ts';
import { TwoVersions } from './TwoVersions.tsx';
import { useDraft } from './use-draft.ts';
import { useLocalTrouble } from './use-local-trouble.ts';
import { type VersionLine, versionRows } from './version-rows.ts';

/** What a change is sent with: see the commands of the api. */
export type SentOn = { garageId: string; commandId: string; baseRevision: number };

type Changing<F, B extends D, D> = {
  garage: { id: string; zone: string };
  /** name under which what was typed is kept */
  draft: string;
  /** what the form was opened with: it stays the same while the page is kept up to date */
  opened: { body: B; revision: number };
  fieldsOf: (body: B, revision: number) => F;
  read: (fields: F) => { body: D } | { problems: Record<string, string> };
  /** reads what somebody else saved meanwhile */
  schema: { safeParse: (body: unknown) => { data?: B | undefined } };
  /** in words, a line for each thing the form can change */
  lines: (body: B) => readonly VersionLine[];
  send: (body: D, on: SentOn) => Promise<Written>;
  /** what follows once it is saved. @param undo puts back what it was put on top of */
  after: (written: Written, undo: () => Promise<unknown>) => Promise<void>;
};

/**
 * The change of something that others may change at the same time. It is sent with the revision it rests on; where
 * somebody else was faster, both versions are shown and nothing is overwritten unseen. Once it is saved it can be
 * undone: what it was put on top of is sent again.
 *
 * @returns the form, what is wrong beside its fields and with the whole, and what `ChangeForm` needs
 */
export function useChange<
  F extends FieldValues & { baseRevision: number },
  B extends D,
  D extends object,
>(of: Changing<F, B, D>) {
  const { garage, opened, fieldsOf, read, lines } = of;
  const form = useForm<F>({
    defaultValues: fieldsOf(opened.body, opened.revision) as DefaultValues<F>,
  });
  const forget = useDraft(of.draft, form);
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, read);
  const command = useCommand(garage.id, ({ body, ...on }: SentOn & { body: D }) =>
    of.send(body, on),
  );
  const conflict = command.trouble?.refusal?.conflict;
  const newest = conflict ? of.schema.safeParse(conflict.body).data : undefined;

  /** @param before what this change is put on top of, to go back to */
  async function save(fields: F, before: B) {
    const found = read(fields);
    setAsked(true);
    if ('problems' in found) return command.clear();
    const { baseRevision } = fields;
    const written = await command.send({ baseRevision, body: found.body });
    if (!written) return;
    forget();
    const undoing = { garageId: garage.id, commandId: newId(), baseRevision: written.revision };
    await of.after(written, () => of.send(before, undoing));
  }

  /** What stands in the form, in words; it was readable when it was sent. */
  function mine(): readonly VersionLine[] {
    const found = read(form.getValues());
    const body = 'body' in found ? of.schema.safeParse(found.body).data : undefined;
    return body ? lines(body) : [];
  }

  const both =
    conflict && newest ? (
      <TwoVersions
        rows={versionRows(mine(), lines(newest))}
        conflict={conflict}
        zone={garage.zone}
        change={command}
        onNewest={() => form.reset(fieldsOf(newest, conflict.revision))}
        onRest={() =>
          form.setValue('baseRevision' as Path<F>, conflict.revision as PathValue<F, Path<F>>)
        }
        onSave={() => save(form.getValues(), newest)}
      />
    ) : null;

  const trouble = wrong ?? command.trouble;
  return {
    form,
    /** beside the fields, by the path the server would name */
    errors: trouble?.fields ?? {},
    /** with the whole form; null where both versions are shown instead */
    trouble: both ? null : trouble,
    /** both versions, where somebody else was faster */
    both,
    busy: command.busy,
    /** what the server said of it no longer holds */
    clear: command.clear,
    /** what was typed is no longer kept */
    forget,
    submit: form.handleSubmit((fields) => save(fields, opened.body)),
  };
}
