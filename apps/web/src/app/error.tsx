'use client';

import { Page } from '../frame/Page.tsx';
import { Trouble } from '../frame/Trouble.tsx';

type FailedProps = { error: Error & { digest?: string }; reset: () => void };

export default function Failed({ error, reset }: FailedProps) {
  return (
    <Page width="narrow">
      <Trouble error={error} retry={reset} />
    </Page>
  );
}
