'use client';

import { type GearInput, gearInput } from '@quartermark/engine/log';
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button } from '../components/index.ts';
import { Form } from '../forms/Form.tsx';
import { TwoVersions } from '../forms/TwoVersions.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import { useWritten } from '../items/use-written.ts';
import { versionRows } from '../items/version-rows.ts';
import { GearParts } from './GearParts.tsx';
import { type GearFields, gearFields, readGear } from './gear-fields.ts';
import { gearLines } from './gear-lines.ts';
import { RemoveGear } from './RemoveGear.tsx';
import { type PieceWhere, usePiece } from './use-piece.ts';

/** Changes a set, a tool or a person. What others save meanwhile is never overwritten unseen. */
export function ChangeGearForm(where: PieceWhere) {
  const { gearId } = where;
  const trpc = useTRPC();
  const { row, garage, owned } = usePiece(where);
  // what the form was opened with: it stays the same while the page is kept up to date
  const [opened] = useState(row);
  const form = useForm<GearFields>({ defaultValues: gearFields(opened.gear, opened.revision) });
  const forget = useDraft(`gear:${gearId}`, form);
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, readGear);
  const { mutateAsync } = useMutation(trpc.gear.change.mutationOptions());
  const change = useCommand(garage.id, mutateAsync);
  const { written, toOwner } = useWritten(owned);
  const conflict = change.trouble?.refusal?.conflict;
  const newest = conflict ? gearInput.safeParse(conflict.body).data : undefined;

  /** @param before what this change is put on top of, to go back to */
  async function save(fields: GearFields, before: GearInput) {
    const read = readGear(fields);
    setAsked(true);
    if ('problems' in read) return change.clear();
    const { baseRevision } = fields;
    const saved = await change.send({ gearId, baseRevision, gear: read.gear });
    if (!saved) return;
    forget();
    const undoing = { garageId: garage.id, gearId, baseRevision: saved.revision, gear: before };
    const commandId = newId();
    await written(saved, () => mutateAsync({ ...undoing, commandId }));
  }

  const trouble = wrong ?? change.trouble;
  const both =
    conflict && newest ? (
      <TwoVersions
        rows={versionRows(mineLines(form.getValues()), gearLines(newest))}
        conflict={conflict}
        zone={garage.zone}
        change={change}
        onNewest={() => form.reset(gearFields(newest, conflict.revision))}
        onRest={() => form.setValue('baseRevision', conflict.revision)}
        onSave={() => save(form.getValues(), newest)}
      />
    ) : null;

  return (
    <>
      <Form
        label="Change it"
        onSubmit={form.handleSubmit((fields) => save(fields, opened.gear))}
        trouble={both ? null : trouble}
        actions={
          <>
            <Button type="submit" look="main" busy={change.busy} busyWords="Saving …">
              Save the change
            </Button>
            <Button
              onClick={() => {
                forget();
                toOwner();
              }}
            >
              Leave without saving
            </Button>
          </>
        }
      >
        <GearParts form={form} errors={trouble?.fields ?? {}} />
        {both}
      </Form>
      <RemoveGear row={row} garage={garage} />
    </>
  );
}

/** What stands in the form, in words; it was readable when it was sent. */
function mineLines(fields: GearFields) {
  const read = readGear(fields);
  const gear = 'gear' in read ? gearInput.safeParse(read.gear).data : undefined;
  return gear ? gearLines(gear) : [];
}
