'use client';

import { useMemo } from 'react';
import { useTRPCClient } from '../../client/trpc.ts';
import { doorsOf } from './doors.ts';
import type { Doors } from './send.ts';

/** The server's doors, of this page. */
export function useDoors(): Doors {
  const client = useTRPCClient();
  return useMemo(() => doorsOf(client), [client]);
}
