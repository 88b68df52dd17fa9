'use client';

import { useQueryErrorResetBoundary } from '@tanstack/react-query';
import type { Route } from 'next';
import { usePathname, useRouter } from 'next/navigation';
import { startTransition } from 'react';
import { refusalWords } from '../client/refusal-words.ts';
import { Button, ButtonLink, PageAnswer } from '../components/index.ts';
import styles from './Trouble.module.css';

type TroubleProps = { error: Error & { digest?: string }; retry: () => void };

/** What a page shows when it has nothing else to show. */
export function Trouble({ error, retry }: TroubleProps) {
  const here = usePathname();
  const router = useRouter();
  const { reset } = useQueryErrorResetBoundary();
  const { message, refusal } = refusalWords(error);
  const again = () =>
    startTransition(() => {
      reset();
      router.refresh();
      retry();
    });
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
          <Button look="main" onClick={again}>
            Try again
          </Button>
        )}
        <ButtonLink href="/">To the garage</ButtonLink>
      </div>
    </>
  );
}
