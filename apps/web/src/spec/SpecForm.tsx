'use client';

import { SPEC_GROUPS, type SpecSheet, specSheet } from '@quartermark/engine/log';
import { useMutation, useQueryClient, useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { useAfterSave } from '../client/AfterSave.tsx';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button } from '../components/index.ts';
import { Form } from '../forms/Form.tsx';
import { TwoVersions } from '../forms/TwoVersions.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import { versionRows } from '../items/version-rows.ts';
import { SpecGroupRows } from './SpecGroupRows.tsx';
import type { SpecWhere } from './SpecScreen.tsx';
import { readSpec, type SpecFields, specFields } from './spec-fields.ts';
import { specVersion } from './spec-words.ts';

/** Writes a car's spec sheet as a whole. What others save meanwhile is never overwritten unseen. */
export function SpecForm(where: SpecWhere) {
  const { garageId, carId } = where;
  const trpc = useTRPC();
  const router = useRouter();
  const client = useQueryClient();
  const afterSave = useAfterSave();
  const { data: view } = useSuspenseQuery(trpc.car.view.queryOptions(where));
  const { data } = useSuspenseQuery(trpc.spec.view.queryOptions(where));
  // what the form was opened with: it stays the same while the page is kept up to date
  const [opened] = useState(data);
  const form = useForm<SpecFields>({ defaultValues: specFields(opened.sheet, opened.revision) });
  const forget = useDraft(`spec:${carId}`, form);
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, readSpec);
  const { mutateAsync } = useMutation(trpc.spec.change.mutationOptions());
  const change = useCommand(garageId, mutateAsync);
  const conflict = change.trouble?.refusal?.conflict;
  const newest = conflict ? specSheet.safeParse(conflict.body).data : undefined;
  const toSheet = () => router.push(`/g/${garageId}/car/${carId}/spec` as Route);
  const refresh = () => client.invalidateQueries({ queryKey: trpc.spec.pathKey() });

  /** @param before what this change is put on top of, to go back to */
  async function save(fields: SpecFields, before: SpecSheet) {
    const read = readSpec(fields);
    setAsked(true);
    if ('problems' in read) return change.clear();
    const { baseRevision } = fields;
    const saved = await change.send({ carId, baseRevision, sheet: read.sheet });
    if (!saved) return;
    forget();
    const commandId = newId();
    const undoing = { garageId, commandId, carId, baseRevision: saved.revision, sheet: before };
    afterSave({
      carId: null,
      entryId: `spec:${carId}`,
      revision: saved.revision,
      version: saved.version,
      undo: async () => {
        await mutateAsync(undoing);
        await refresh();
      },
    });
    await refresh();
    toSheet();
  }

  const trouble = wrong ?? change.trouble;
  const both =
    conflict && newest ? (
      <TwoVersions
        rows={versionRows(mineLines(form.getValues()), specVersion(newest))}
        conflict={conflict}
        zone={view.garage.zone}
        change={change}
        onNewest={() => form.reset(specFields(newest, conflict.revision))}
        onRest={() => form.setValue('baseRevision', conflict.revision)}
        onSave={() => save(form.getValues(), newest)}
      />
    ) : null;

  return (
    <Form
      label="Spec sheet"
      onSubmit={form.handleSubmit((fields) => save(fields, opened.sheet))}
      trouble={both ? null : trouble}
      actions={
        <>
          <Button type="submit" look="main" busy={change.busy} busyWords="Saving …">
            Save the sheet
          </Button>
          <Button
            onClick={() => {
              forget();
              toSheet();
            }}
          >
            Leave without saving
          </Button>
        </>
      }
    >
      {SPEC_GROUPS.map((group) => (
        <SpecGroupRows
          key={group}
          form={form}
          group={group}
          errors={trouble?.fields ?? {}}
          onMoved={change.clear}
        />
      ))}
      {both}
    </Form>
  );
}

/** What stands in the form, in words; it was readable when it was sent. */
function mineLines(fields: SpecFields) {
  const read = readSpec(fields);
  return 'sheet' in read ? specVersion(read.sheet) : [];
}
