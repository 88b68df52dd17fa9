'use client';

import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { postAccount } from '../../client/account.ts';
import type { Trouble } from '../../client/refusal-words.ts';
import { Button, TextField } from '../../components/index.ts';
import { Form } from '../../forms/Form.tsx';

type Credentials = { email: string; password: string };

export function SignInForm({ to }: { to: string }) {
  const { register, handleSubmit, formState } = useForm<Credentials>({
    defaultValues: { email: '', password: '' },
  });
  const [trouble, setTrouble] = useState<Trouble | null>(null);

  async function send(credentials: Credentials) {
    const refused = await postAccount('sign-in/email', credentials);
    if (refused) setTrouble(refused);
    // a whole new page: nothing that was cached while signed out may stay
    else window.location.assign(to);
  }

  return (
    <Form
      label="Sign in"
      onSubmit={handleSubmit(send)}
      trouble={trouble}
      actions={
        <Button type="submit" look="main" busy={formState.isSubmitting} busyWords="Signing in …">
          Sign in
        </Button>
      }
    >
      <TextField
        label="E-mail address"
        type="email"
        autoComplete="username"
        error={trouble?.fields.email ?? formState.errors.email?.message}
        {...register('email', { required: 'Fill in the e-mail address.' })}
      />
      <TextField
        label="Password"
        type="password"
        autoComplete="current-password"
        error={trouble?.fields.password ?? formState.errors.password?.message}
        {...register('password', { required: 'Fill in the password.' })}
      />
    </Form>
  );
}
