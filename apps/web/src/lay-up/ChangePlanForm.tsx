'use client';

import type { GarageView, PlannedLayUpView } from '@quartermark/api/client';
import { plannedLayUp } from '@quartermark/engine/log';
import { useMutation, useSuspenseQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useTRPC } from '../client/trpc.ts';
import { Notice } from '../components/index.ts';
import { ChangeForm } from '../forms/ChangeForm.tsx';
import { useChange } from '../forms/use-change.tsx';
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
  const { layUpId, carId, layUp, revision } = opened;
  const garageId = garage.id;
  const trpc = useTRPC();
  const { mutateAsync } = useMutation(trpc.plannedLayUp.change.mutationOptions());
  const { saved, leave } = usePlanSaved(garageId, `/g/${garageId}/car/${carId}`);
  const change = useChange({
    garage,
    draft: `lay-up:${layUpId}`,
    opened: { body: layUp, revision },
    fieldsOf: (body, rests) => planFields(body, carId, rests),
    read,
    schema: plannedLayUp,
    lines: planLines,
    send: (body, on) => mutateAsync({ ...on, layUpId, layUp: body }),
    after: (written, undo) => saved(written, { carId, undo }),
  });
  return (
    <ChangeForm label="Change the planned lay-up" change={change} onLeave={leave}>
      <PlanDays form={change.form} errors={change.errors} />
    </ChangeForm>
  );
}

function read(fields: PlanFields) {
  const found = readPlan(fields);
  return 'layUp' in found ? { body: found.layUp } : found;
}
