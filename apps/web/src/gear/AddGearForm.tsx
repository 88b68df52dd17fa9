'use client';

import type { GarageView } from '@quartermark/api/client';
import { type Proposal, proposeGearItems } from '@quartermark/engine/library';
import { type GearKind, gearInput } from '@quartermark/engine/log';
import { useMutation } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { Controller, useForm, useWatch } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { useIds } from '../client/use-ids.ts';
import { Button, Choice } from '../components/index.ts';
import { Form } from '../forms/Form.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import type { Problems } from '../items/limit-fields.ts';
import { useWritten } from '../items/use-written.ts';
import { GearParts } from './GearParts.tsx';
import { emptyGear, type GearFields, gearDraft, readGear } from './gear-fields.ts';
import { ProposalTicks } from './ProposalTicks.tsx';
import { type Ticks, tickedItems } from './proposal-ticks.ts';

const KINDS: readonly GearKind[] = ['component', 'equipment', 'person'];
const KIND_WORDS: Readonly<Record<GearKind, string>> = {
  component: 'A set or part',
  equipment: 'A tool',
  person: 'A person',
};
const KIND_OPTIONS = KINDS.map((value) => ({ value, words: KIND_WORDS[value] }));

type AddGearFormProps = { garage: GarageView; kind: GearKind };

/** Adds a set or part, a tool or a person, with what is to be watched on it. */
export function AddGearForm({ garage, kind }: AddGearFormProps) {
  const trpc = useTRPC();
  const router = useRouter();
  const form = useForm<GearFields>({ defaultValues: emptyGear(kind) });
  const watching = useForm<{ ticks: Ticks }>({ defaultValues: { ticks: {} } });
  const forget = useDraft(`gear-add:${garage.id}`, form);
  const forgetTicks = useDraft(`gear-add-items:${garage.id}`, watching);
  const ticks = useWatch({ control: watching.control, name: 'ticks' });
  const proposals = useProposals(useWatch({ control: form.control }) as GearFields);
  const [asked, setAsked] = useState(false);
  const read = (fields: GearFields) => readAll(fields, proposals, watching.getValues('ticks'));
  const wrong = useLocalTrouble(form, asked, read);
  const add = useCommand(garage.id, useMutation(trpc.gear.add.mutationOptions()).mutateAsync);
  const remove = useMutation(trpc.gear.remove.mutationOptions());
  // made once: pressed again after no answer, the same thing is meant
  const [gearId] = useState(newId);
  const idOf = useIds();
  const { written } = useWritten({
    garage,
    owner: { gearId },
    href: `/g/${garage.id}/gear/${gearId}`,
  });

  async function save(fields: GearFields) {
    const all = read(fields);
    setAsked(true);
    if ('problems' in all) return add.clear();
    const items = all.items.map(({ key, item }) => ({ itemId: idOf(key), item }));
    const saved = await add.send({ gearId, gear: all.gear, items });
    if (!saved) return;
    forget();
    forgetTicks();
    const undoing = {
      garageId: garage.id,
      commandId: newId(),
      gearId,
      baseRevision: saved.revision,
    };
    await written(saved, () => remove.mutateAsync(undoing));
  }

  const trouble = wrong ?? add.trouble;
  return (
    <Form
      label="Add a set, a tool or a person"
      onSubmit={form.handleSubmit(save)}
      trouble={trouble}
      actions={
        <>
          <Button type="submit" look="main" busy={add.busy} busyWords="Saving …">
            Add it
          </Button>
          <Button
            onClick={() => {
              forget();
              forgetTicks();
              router.push(`/g/${garage.id}/gear` as Route);
            }}
          >
            Leave without saving
          </Button>
        </>
      }
    >
      <Controller
        control={form.control}
        name="kind"
        render={({ field }) => (
          <Choice
            label="What to add"
            options={KIND_OPTIONS}
            value={field.value}
            onChange={field.onChange}
          />
        )}
      />
      <GearParts form={form} errors={trouble?.fields ?? {}} />
      <ProposalTicks
        proposals={proposals}
        ticks={ticks}
        errors={trouble?.fields ?? {}}
        onChange={(next) => watching.setValue('ticks', next)}
      />
    </Form>
  );
}

/** By what such a thing is usually watched; follows what is typed. */
function useProposals(fields: GearFields): Proposal[] {
  const named = { ...fields, name: fields.name.trim() === '' ? 'It' : fields.name };
  const gear = gearInput.safeParse(gearDraft(named)).data;
  return gear ? proposeGearItems(gear) : [];
}

function readAll(fields: GearFields, proposals: readonly Proposal[], ticks: Ticks) {
  const problems: Problems = {};
  const read = readGear(fields);
  const items = tickedItems(proposals, ticks, problems);
  const all = { ...('problems' in read ? read.problems : {}), ...problems };
  if ('problems' in read || Object.keys(all).length > 0) return { problems: all };
  return { gear: read.gear, items };
}
