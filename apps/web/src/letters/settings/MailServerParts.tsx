'use client';

import { Controller, useWatch } from 'react-hook-form';
import { Choice, SelectField, TextField, Tick } from '../../components/index.ts';
import { FormPair, FormSection } from '../../forms/Form.tsx';
import { ENCRYPTION_WORDS } from './post-fields.ts';
import type { PostPartProps } from './post-part-props.ts';

const BY = [
  { value: 'none', words: 'No mail: letters lie here' },
  { value: 'server', words: 'By this mail server' },
] as const;

const ENCRYPTIONS = Object.entries(ENCRYPTION_WORDS).map(([value, words]) => ({ value, words }));

type MailServerPartsProps = PostPartProps & {
  /** one is kept by the server */
  hasPassword: boolean;
  /** as typed; empty: the kept one */
  password: string;
  onPassword: (password: string) => void;
};

/** The server that takes the garage's letters. */
export function MailServerParts(props: MailServerPartsProps) {
  const { form, errors } = props;
  const { control, register } = form;
  const by = useWatch({ control, name: 'by' });
  return (
    <FormSection title="Mail server">
      <Controller
        control={control}
        name="by"
        render={({ field }) => (
          <Choice
            label="How letters leave"
            size="small"
            options={BY}
            value={field.value}
            onChange={field.onChange}
            error={errors.mail}
          />
        )}
      />
      {by === 'none' ? null : (
        <>
          <FormPair>
            <TextField
              label="Server"
              hint="As your mail provider names it for sending."
              autoComplete="off"
              spellCheck={false}
              error={errors['mail.host']}
              {...register('host')}
            />
            <TextField
              label="Port"
              hint="465 or 587; others only where whoever runs this house allows them."
              inputMode="numeric"
              figures
              autoComplete="off"
              error={errors['mail.port']}
              {...register('port')}
            />
          </FormPair>
          <SelectField
            label="Encryption"
            options={ENCRYPTIONS}
            error={errors['mail.encryption']}
            {...register('encryption')}
          />
          <Login {...props} />
          <TextField
            label="Letters come from"
            hint="A mailbox the server may send for."
            type="email"
            autoComplete="off"
            error={errors['mail.from']}
            {...register('from')}
          />
        </>
      )}
    </FormSection>
  );
}

function Login({ form, errors, hasPassword, password, onPassword }: MailServerPartsProps) {
  const { control, register } = form;
  const login = useWatch({ control, name: 'login' });
  return (
    <>
      <Controller
        control={control}
        name="login"
        render={({ field }) => (
          <Tick
            label="The server wants a login"
            hint="It is never sent in the clear: without encryption nothing is sent."
            name="login"
            checked={field.value}
            onChange={field.onChange}
          />
        )}
      />
      {login ? (
        <FormPair>
          <TextField
            label="Login"
            autoComplete="off"
            spellCheck={false}
            error={errors['mail.user']}
            {...register('user')}
          />
          <TextField
            label="Password"
            hint={
              hasPassword
                ? 'One is kept and never shown. Type to replace it; empty keeps it.'
                : 'Kept by the server, never shown again, and not kept in this form.'
            }
            optional={hasPassword}
            type="password"
            autoComplete="new-password"
            name="password"
            value={password}
            onChange={(event) => onPassword(event.currentTarget.value)}
            error={errors.password ?? errors['password.set']}
          />
        </FormPair>
      ) : null}
    </>
  );
}
