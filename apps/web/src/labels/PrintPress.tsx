'use client';

import { Button } from '../components/index.ts';

/** Opens the browser's print dialog. */
export function PrintPress({ look = 'main' }: { look?: 'main' | 'plain' }) {
  return (
    <Button look={look} onClick={() => window.print()}>
      Print
    </Button>
  );
}
