'use client';

import type { GarageView } from '@quartermark/api/client';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { useForm } from 'react-hook-form';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, SelectField, TextField, useToast } from '../components/index.ts';
import { Form, FormPair } from '../forms/Form.tsx';
import { DISTANCE_OPTIONS, VOLUME_OPTIONS } from '../forms/options.ts';
import { useDraft } from '../forms/use-draft.ts';
import { ZoneField } from '../forms/ZoneField.tsx';

type GarageFields = Pick<GarageView, 'name' | 'zone' | 'distanceUnit' | 'volumeUnit'> & {
  hemisphere: 'N' | 'S' | '';
};

const HEMISPHERE_OPTIONS = [
  { value: '', words: 'Not said' },
  { value: 'N', words: 'Northern' },
  { value: 'S', words: 'Southern' },
] as const;

export function GarageForm({ garage }: { garage: GarageView }) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const router = useRouter();
  const toast = useToast();
  const form = useForm<GarageFields>({ defaultValues: fieldsOf(garage) });
  const forget = useDraft(`garage:${garage.id}:${garage.revision}`, form);
  const change = useMutation(trpc.garage.change.mutationOptions());
  const { send, busy, trouble } = useCommand(garage.id, change.mutateAsync);

  async function save({ hemisphere, ...fields }: GarageFields) {
    const written = await send({
      baseRevision: garage.revision,
      ...fields,
      hemisphere: hemisphere === '' ? null : hemisphere,
    });
    if (!written) return;
    forget();
    toast({ words: 'Saved.' });
    await client.invalidateQueries({ queryKey: trpc.garage.pathKey() });
    router.refresh();
  }

  const { register, handleSubmit } = form;
  return (
    <Form
      label="Garage"
      onSubmit={handleSubmit(save)}
      trouble={trouble}
      actions={
        <Button type="submit" look="main" busy={busy} busyWords="Saving …">
          Save the garage
        </Button>
      }
    >
      <TextField label="Name of the garage" error={trouble?.fields.name} {...register('name')} />
      <FormPair>
        <ZoneField
          label="Time zone"
          hint="Decides which day it is. A change has every car recomputed."
          error={trouble?.fields.zone}
          {...register('zone')}
        />
        <SelectField
          label="Hemisphere"
          hint="Tells winter from summer where seasons matter."
          options={HEMISPHERE_OPTIONS}
          error={trouble?.fields.hemisphere}
          {...register('hemisphere')}
        />
      </FormPair>
      <FormPair>
        <SelectField
          label="Distances in"
          hint="Each car’s odometer keeps its own unit."
          options={DISTANCE_OPTIONS}
          error={trouble?.fields.distanceUnit}
          {...register('distanceUnit')}
        />
        <SelectField
          label="Volumes in"
          options={VOLUME_OPTIONS}
          error={trouble?.fields.volumeUnit}
          {...register('volumeUnit')}
        />
      </FormPair>
    </Form>
  );
}

function fieldsOf(garage: GarageView): GarageFields {
  const { name, zone, distanceUnit, volumeUnit, hemisphere } = garage;
  return { name, zone, distanceUnit, volumeUnit, hemisphere: hemisphere ?? '' };
}
