'use client';

import { useState } from 'react';
import { postAccount } from '../../../../client/account.ts';
import { Button, useToast } from '../../../../components/index.ts';
import { ThemeChoice } from '../../../../frame/ThemeChoice.tsx';
import type { Theme } from '../../../../frame/theme.ts';
import { PocketSettings } from '../../../../pocket/PocketSettings.tsx';
import { dropSheet } from '../../../../pocket/sheet/pocket-sheet.ts';
import styles from './ThisBrowser.module.css';

/** What concerns this browser and this person only. */
export function ThisBrowser({ theme }: { theme: Theme }) {
  const toast = useToast();
  const [busy, setBusy] = useState(false);

  async function signOut() {
    setBusy(true);
    const refused = await postAccount('sign-out', {});
    if (!refused) {
      await dropSheet();
      return window.location.assign('/');
    }
    setBusy(false);
    toast({ words: 'You are still signed in.', detail: refused.message, tone: 'alarm' });
  }

  return (
    <section className={styles.section}>
      <h2>This browser</h2>
      <ThemeChoice painted={theme} />
      <PocketSettings />
      <div>
        <Button onClick={signOut} busy={busy} busyWords="Signing out …">
          Sign out
        </Button>
      </div>
    </section>
  );
}
