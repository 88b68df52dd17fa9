'use client';

import type { GarageView, PlannedLayUpView } from '@quartermark/api/client';
import { type PlannedLayUp, plannedLayUp } from '@quartermark/engine/log';
import { useMutation, useSuspenseQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, Notice } from '../components/index.ts';
import { Form } from '../forms/Form.tsx';
import { TwoVersions } from '../forms/TwoVersions.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import { versionRows } from '../items/version-rows.ts';
import { PlanDays } from './PlanDays.tsx';
import { type PlanFields, planFields, planLines, readPlan } from './plan-fields.ts';
import { RemovePlan } from './RemovePlan.tsx';
import { usePlanSaved } from './use-plan-saved.ts';

type ChangePlanFormProps = { garageId: string; layUpId: string };

/** Changes the days of a planned lay-up, or drops the plan. */
export function ChangePlanForm({ garageId, layUpId }: ChangePlanFormProps) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.event.list.queryOptions({ garageId }));
  const standing = data.plannedLayUps.find((one) => one.layUpId === layUpId);
  // what the form was opened with: it stays the same while the page is kept up to date
  const [opened] = useState(standing);
  if (!opened)
    return <Notice tone="alarm">This lay-up is no longer planned. Go back to the calendar.</Notice>;
  return (
    <>
      <Opened opened={opened} garage={data.garage} />
      {standing ? <RemovePlan standing={standing} garageId={garageId} /> : null}
    </>
  );
}

function Opened({ opened, garage }: { opened: PlannedLayUpView; garage: GarageView }) {
  const { layUpId, carId } = opened;
  const garageId = garage.id;
  const trpc = useTRPC();
  const fieldsOf = (layUp: PlannedLayUp, revision: number) => planFields(layUp, carId, revision);
  const form = useForm<PlanFields>({ defaultValues: fieldsOf(opened.layUp, opened.revision) });
  const forget = useDraft(`lay-up:${layUpId}`, form);
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, readPlan);
  const { mutateAsync } = useMutation(trpc.plannedLayUp.change.mutationOptions());
  const change = useCommand(garageId, mutateAsync);
  const { saved, leave } = usePlanSaved(garageId, `/g/${garageId}/car/${carId}`);
  const conflict = change.trouble?.refusal?.conflict;
  const newest = conflict ? plannedLayUp.safeParse(conflict.body).data : undefined;

  /** @param before what this change is put on top of, to go back to */
  async function save(fields: PlanFields, before: PlannedLayUp) {
    const read = readPlan(fields);
    setAsked(true);
    if ('problems' in read) return change.clear();
    const { baseRevision } = fields;
    const written = await change.send({ layUpId, baseRevision, layUp: read.layUp });
    if (!written) return;
    forget();
    const undoing = { garageId, layUpId, baseRevision: written.revision, layUp: before };
    const commandId = newId();
    await saved(written, { carId, undo: () => mutateAsync({ ...undoing, commandId }) });
  }

  const trouble = wrong ?? change.trouble;
  const mine = readPlan(form.getValues());
  const both =
    conflict && newest ? (
      <TwoVersions
        rows={versionRows('layUp' in mine ? planLines(mine.layUp) : [], planLines(newest))}
        conflict={conflict}
        zone={garage.zone}
        change={change}
        onNewest={() => form.reset(fieldsOf(newest, conflict.revision))}
        onRest={() => form.setValue('baseRevision', conflict.revision)}
        onSave={() => save(form.getValues(), newest)}
      />
    ) : null;

  return (
    <Form
      label="Change the planned lay-up"
      onSubmit={form.handleSubmit((fields) => save(fields, opened.layUp))}
      trouble={both ? null : trouble}
      actions={
        <>
          <Button type="submit" look="main" busy={change.busy} busyWords="Saving …">
            Save the change
          </Button>
          <Button
            onClick={() => {
              forget();
              leave();
            }}
          >
            Leave without saving
          </Button>
        </>
      }
    >
      <PlanDays form={form} errors={trouble?.fields ?? {}} />
      {both}
    </Form>
  );
}
