'use client';

import type { AppRouter } from '@quartermark/api/client';
import { createTRPCContext } from '@trpc/tanstack-react-query';

/** `const trpc = useTRPC()`, then `useQuery(trpc.car.view.queryOptions({...}))`. */
export const { TRPCProvider, useTRPC, useTRPCClient } = createTRPCContext<AppRouter>();
