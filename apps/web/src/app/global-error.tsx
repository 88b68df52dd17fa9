'use client';

import '../styles/fonts.css';
import '../styles/tokens.css';
import '../styles/base.css';
import { Page } from '../frame/Page.tsx';

type FailedProps = { error: Error & { digest?: string }; reset: () => void };

export default function EverythingFailed({ error, reset }: FailedProps) {
  return (
    <html lang="en" data-theme="system">
      <body>
        <Page width="narrow">
          <h1>Quartermark could not be shown.</h1>
          <p>
            Nothing that was saved is lost. Try again; if it stays so, look in the server’s log
            {error.digest ? ` for ${error.digest}` : ''}.
          </p>
          <p>
            <button type="button" onClick={reset}>
              Try again
            </button>
          </p>
        </Page>
      </body>
    </html>
  );
}
