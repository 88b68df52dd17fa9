'use client';

import { useState } from 'react';
import { postAccount } from '../../client/account.ts';
import type { Trouble } from '../../client/refusal-words.ts';
import { Button, ButtonLink, Notice, TextField } from '../../components/index.ts';
import { FormSection } from '../../forms/Form.tsx';
import styles from './FirstStart.module.css';
import { OwnerForm } from './OwnerForm.tsx';

type FirstStartProps = { token: string; demoOpen: boolean; inDemo: boolean };

/** Both ways in need the setup token: it shows that whoever asks can see where the server was started. */
export function FirstStart({ token: given, demoOpen, inDemo }: FirstStartProps) {
  const [token, setToken] = useState(given);
  const [tokenError, setTokenError] = useState<string | null>(null);
  const missing = token.trim() === '' ? 'Fill in the setup token first.' : null;
  return (
    <div className={styles.ways}>
      <TextField
        label="Setup token"
        hint={
          <>
            It was printed in the terminal when Quartermark started, as part of the address to open.
            Until there is an owner, each start prints a fresh one and the older ones no longer
            count.
          </>
        }
        value={token}
        onChange={(event) => {
          setToken(event.currentTarget.value);
          setTokenError(null);
        }}
        error={tokenError}
        autoComplete="off"
        spellCheck={false}
        figures
      />
      <FormSection title="Look around first">
        <p>
          The demo garage belongs to an invented club: six invented cars with two years of log each.
          Change what you like. It closes for good once the owner’s account is made.
        </p>
        <DemoWay
          token={token}
          missing={missing}
          demoOpen={demoOpen}
          inDemo={inDemo}
          onTokenError={setTokenError}
        />
      </FormSection>
      <FormSection title="The owner and the garage">
        <OwnerForm token={token} missing={missing} onTokenError={setTokenError} />
      </FormSection>
    </div>
  );
}

type DemoWayProps = {
  token: string;
  missing: string | null;
  demoOpen: boolean;
  inDemo: boolean;
  onTokenError: (words: string | null) => void;
};

function DemoWay({ token, missing, demoOpen, inDemo, onTokenError }: DemoWayProps) {
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<Trouble | null>(null);

  async function open() {
    setBusy(true);
    const refused = await postAccount('setup/demo', { token: token.trim() });
    if (!refused) return window.location.assign('/');
    onTokenError(refused.fields.token ?? null);
    setTrouble(refused.fields.token ? null : refused);
    setBusy(false);
  }

  if (inDemo) return <ButtonLink href="/">Back to the demo garage</ButtonLink>;
  return (
    <>
      {trouble ? <Notice tone="alarm">{trouble.message}</Notice> : null}
      <Button
        onClick={open}
        busy={busy}
        busyWords="Filling the demo garage …"
        reason={demoOpen ? missing : 'The demo garage is closed.'}
      >
        Open the demo garage
      </Button>
    </>
  );
}
