'use client';

import type { GarageView } from '@quartermark/api/client';
import { READY_FOR_WORDS } from '@quartermark/engine/display';
import {
  type ReadyFor,
  type Requirements,
  requirements as requirementsSchema,
} from '@quartermark/engine/log';
import { usualRequirements } from '@quartermark/engine/readiness';
import { useMutation, useSuspenseQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Controller, useForm } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button } from '../components/index.ts';
import { Form } from '../forms/Form.tsx';
import { TwoVersions } from '../forms/TwoVersions.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import { versionRows } from '../forms/version-rows.ts';
import type { Problems } from '../items/limit-fields.ts';
import { RequirementParts } from './RequirementParts.tsx';
import {
  formErrors,
  type RequirementFields,
  readRequirements,
  requirementFields,
} from './requirement-fields.ts';
import { requirementLines } from './requirement-lines.ts';
import { useAsksSaved } from './use-asks-saved.ts';

const PATH = 'requirements';

/** What the form holds: the requirements, and the revision they were taken from. */
type AsksFields = { baseRevision: number; asks: RequirementFields };

/** What a garage asks for a sort of use; "back to the usual" takes its own away. */
export function AsksForm({ garageId, use }: { garageId: string; use: ReadyFor }) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.requirements.list.queryOptions({ garageId }));
  const standing = data.rows.find((row) => row.use === use);
  // what the form was opened with: it stays the same while the page is kept up to date
  const [opened] = useState(standing);
  if (!opened) throw new Error(`could not find what is asked for ${use}: the list should have it`);
  return <Opened garage={data.garage} use={use} opened={opened} />;
}

type OpenedProps = {
  garage: GarageView;
  use: ReadyFor;
  opened: { requirements: Requirements; usual: boolean; revision: number };
};

const read = ({ asks }: AsksFields): { requirements: Requirements } | { problems: Problems } => {
  const problems: Problems = {};
  const requirements = readRequirements(asks, PATH, problems);
  return requirements === null ? { problems } : { requirements };
};

function Opened({ garage, use, opened }: OpenedProps) {
  const { id: garageId } = garage;
  const trpc = useTRPC();
  const form = useForm<AsksFields>({
    defaultValues: {
      baseRevision: opened.revision,
      asks: requirementFields(opened.requirements),
    },
  });
  const forget = useDraft(`asks:${garageId}:${use}`, form);
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, read);
  const { mutateAsync } = useMutation(trpc.requirements.change.mutationOptions());
  const change = useCommand(garageId, mutateAsync);
  const { saved, toSettings } = useAsksSaved(garageId);

  const conflict = change.trouble?.refusal?.conflict;
  const newest = conflict ? bodyOf(conflict.body, use) : undefined;

  /** @param before what this change is put on top of, to go back to; null: the usual ones */
  async function send(requirements: Requirements | null, before: Requirements | null) {
    const baseRevision = form.getValues('baseRevision');
    const written = await change.send({ use, baseRevision, requirements });
    if (!written) return;
    forget();
    const undoing = { garageId, use, baseRevision: written.revision, requirements: before };
    const commandId = newId();
    await saved(written, () => mutateAsync({ ...undoing, commandId }));
  }

  async function save(before: Requirements | null) {
    const found = read(form.getValues());
    setAsked(true);
    if ('problems' in found) return change.clear();
    await send(found.requirements, before);
  }

  const before = opened.usual ? null : opened.requirements;
  const trouble = wrong ?? change.trouble;
  const mine = read(form.getValues());
  const both =
    conflict && newest && 'requirements' in mine ? (
      <TwoVersions
        rows={versionRows(requirementLines(mine.requirements), requirementLines(newest))}
        conflict={conflict}
        zone={garage.zone}
        change={change}
        onNewest={() =>
          form.reset({ baseRevision: conflict.revision, asks: requirementFields(newest) })
        }
        onRest={() => form.setValue('baseRevision', conflict.revision)}
        onSave={() => save(conflict.body === null ? null : newest)}
      />
    ) : null;

  return (
    <Form
      label={`What is asked for ${READY_FOR_WORDS[use]}`}
      onSubmit={form.handleSubmit(() => save(before))}
      trouble={both ? null : trouble}
      actions={
        <>
          <Button type="submit" look="main" busy={change.busy} busyWords="Saving …">
            Save it
          </Button>
          {opened.usual ? null : (
            <Button busy={change.busy} onClick={() => send(null, before)}>
              Back to the usual
            </Button>
          )}
          <Button
            onClick={() => {
              forget();
              toSettings();
            }}
          >
            Leave without saving
          </Button>
        </>
      }
    >
      <Controller
        control={form.control}
        name="asks"
        render={({ field }) => (
          <RequirementParts
            fields={field.value}
            onChange={field.onChange}
            errors={formErrors(trouble?.fields ?? {})}
            path={PATH}
          />
        )}
      />
      {both}
    </Form>
  );
}

/** Somebody may have gone back to the usual ones meanwhile. */
function bodyOf(body: unknown, use: ReadyFor): Requirements | undefined {
  return body === null ? usualRequirements(use) : requirementsSchema.safeParse(body).data;
}
