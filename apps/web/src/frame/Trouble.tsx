'use client';

import type { Route } from 'next';
import { usePathname } from 'next/navigation';
import { refusalWords } from '../client/refusal-words.ts';
import { Button, ButtonLink, PageAnswer } from '../components/index.ts';
import styles from './Trouble.module.css';

type TroubleProps = { error: Error & { digest?: string }; retry: () => void };

/** What a page shows when it has nothing else to show. */
export function Trouble({ error, retry }: TroubleProps) {
  const here = usePathname();
  const { message, refusal } = refusalWords(error);
  const signedOut = refusal?.code === 'signedOut';
  return (
    <>
      <PageAnswer about="This page could not be shown">
        {error.digest
          ? `The server could not do its part. Try again; if it stays so, look in its log for ${error.digest}.`
          : message}
      </PageAnswer>
      <div className={styles.actions}>
        {signedOut ? (
          <ButtonLink look="main" href={`/sign-in?to=${encodeURIComponent(here)}` as Route}>
            Sign in
          </ButtonLink>
        ) : (
          <Button look="main" onClick={retry}>
            Try again
          </Button>
        )}
        <ButtonLink href="/">To the garage</ButtonLink>
      </div>
    </>
  );
}
