'use client';

import { Button } from '../components/index.ts';

/** Opens the browser's print dialog. */
export function PrintPress() {
  return (
    <Button look="main" onClick={() => window.print()}>
      Print
    </Button>
  );
}
