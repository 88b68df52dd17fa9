'use client';

import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { Controller, useForm } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button } from '../components/index.ts';
import { Form, FormSection } from '../forms/Form.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import { CarChoice } from './CarChoice.tsx';
import { PlanDays } from './PlanDays.tsx';
import { emptyPlan, type PlanFields, readPlan } from './plan-fields.ts';
import { usePlanSaved } from './use-plan-saved.ts';

type PlanLayUpFormProps = {
  garageId: string;
  /** null: the car is to be chosen */
  carId: string | null;
};

/** Plans a lay-up, of a car that was named or of one that is chosen here. */
export function PlanLayUpForm({ garageId, carId }: PlanLayUpFormProps) {
  const trpc = useTRPC();
  const form = useForm<PlanFields>({ defaultValues: emptyPlan(carId ?? '') });
  const forget = useDraft(`lay-up-add:${garageId}:${carId ?? ''}`, form);
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, readPlan);
  const { mutateAsync } = useMutation(trpc.plannedLayUp.add.mutationOptions());
  const add = useCommand(garageId, mutateAsync);
  const remove = useMutation(trpc.plannedLayUp.remove.mutationOptions());
  // made once: pressed again after no answer, the same plan is meant
  const [layUpId] = useState(newId);
  const from = carId === null ? `/g/${garageId}/events` : `/g/${garageId}/car/${carId}`;
  const { saved, leave } = usePlanSaved(garageId, from);

  async function save(fields: PlanFields) {
    const read = readPlan(fields);
    setAsked(true);
    if ('problems' in read) return add.clear();
    const written = await add.send({ layUpId, ...read });
    if (!written) return;
    forget();
    const undoing = { garageId, commandId: newId(), layUpId, baseRevision: written.revision };
    await saved(written, { carId: read.carId, undo: () => remove.mutateAsync(undoing) });
  }

  const trouble = wrong ?? add.trouble;
  const errors = trouble?.fields ?? {};
  return (
    <Form
      label="Plan a lay-up"
      onSubmit={form.handleSubmit(save)}
      trouble={trouble}
      actions={
        <>
          <Button type="submit" look="main" busy={add.busy} busyWords="Saving …">
            Plan the lay-up
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
      {carId === null ? (
        <FormSection title="The car">
          <Controller
            control={form.control}
            name="carId"
            render={({ field }) => (
              <CarChoice
                garageId={garageId}
                value={field.value}
                onChange={field.onChange}
                error={errors.carId}
              />
            )}
          />
        </FormSection>
      ) : null}
      <PlanDays form={form} errors={errors} />
    </Form>
  );
}
