'use client';

import { useEffect, useState } from 'react';
import { useForm } from 'react-hook-form';
import { postAccount } from '../../client/account.ts';
import type { Trouble } from '../../client/refusal-words.ts';
import { Button, SelectField, TextField } from '../../components/index.ts';
import { Form, FormPair } from '../../forms/Form.tsx';
import { DISTANCE_OPTIONS, VOLUME_OPTIONS } from '../../forms/options.ts';
import { ZoneField } from '../../forms/ZoneField.tsx';

type OwnerFields = {
  name: string;
  email: string;
  password: string;
  garageName: string;
  zone: string;
  distanceUnit: 'km' | 'mi';
  volumeUnit: 'l' | 'usQt' | 'impQt';
};

const EMPTY: OwnerFields = {
  name: '',
  email: '',
  password: '',
  garageName: '',
  zone: '',
  distanceUnit: 'km',
  volumeUnit: 'l',
};

const filled = (what: string) => (text: string) => text.trim() !== '' || `Fill in ${what}.`;

type OwnerFormProps = {
  token: string;
  missing: string | null;
  onTokenError: (words: string | null) => void;
};

export function OwnerForm({ token, missing, onTokenError }: OwnerFormProps) {
  const { register, handleSubmit, formState, setValue, getValues } = useForm<OwnerFields>({
    defaultValues: EMPTY,
  });
  const [trouble, setTrouble] = useState<Trouble | null>(null);

  useEffect(() => {
    const { timeZone } = Intl.DateTimeFormat().resolvedOptions();
    if (getValues('zone') === '') setValue('zone', timeZone);
  }, [getValues, setValue]);

  async function send(fields: OwnerFields) {
    const refused = await postAccount('setup/owner', { ...fields, token: token.trim() });
    if (!refused) return window.location.assign('/');
    onTokenError(refused.fields.token ?? null);
    setTrouble(refused);
  }

  const wrong = (field: keyof OwnerFields) =>
    formState.errors[field]?.message ?? trouble?.fields[field];
  return (
    <Form
      label="The owner and the garage"
      onSubmit={handleSubmit(send)}
      trouble={trouble}
      actions={
        <Button
          type="submit"
          look="main"
          busy={formState.isSubmitting}
          busyWords="Making the garage …"
          reason={missing}
        >
          Make the garage
        </Button>
      }
    >
      <FormPair>
        <TextField
          label="Your name"
          autoComplete="name"
          error={wrong('name')}
          {...register('name', { validate: filled('your name') })}
        />
        <TextField
          label="E-mail address"
          type="email"
          autoComplete="username"
          error={wrong('email')}
          {...register('email', { validate: filled('an address to sign in with') })}
        />
      </FormPair>
      <TextField
        label="Password"
        type="password"
        autoComplete="new-password"
        hint="At least 10 characters; length counts, not signs."
        error={wrong('password')}
        {...register('password', { validate: filled('a password') })}
      />
      <TextField
        label="Name of the garage"
        hint="Such as the street it stands in, or the club."
        error={wrong('garageName')}
        {...register('garageName', { validate: filled('a name for the garage') })}
      />
      <ZoneField
        label="Time zone of the garage"
        hint="Decides which day it is, so when something falls due. Taken from this browser."
        error={wrong('zone')}
        {...register('zone')}
      />
      <FormPair>
        <SelectField
          label="Distances in"
          options={DISTANCE_OPTIONS}
          error={wrong('distanceUnit')}
          {...register('distanceUnit')}
        />
        <SelectField
          label="Volumes in"
          options={VOLUME_OPTIONS}
          error={wrong('volumeUnit')}
          {...register('volumeUnit')}
        />
      </FormPair>
    </Form>
  );
}
