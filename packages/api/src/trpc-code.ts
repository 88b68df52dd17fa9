import type { TRPC_ERROR_CODE_KEY } from '@trpc/server';
import type { RefusalCode } from './refusal.ts';

/** The one place where a refusal becomes a tRPC code; the compiler sees to it that none is missing. */
const TRPC_CODE: Record<RefusalCode, TRPC_ERROR_CODE_KEY> = {
  badInput: 'BAD_REQUEST',
  notFound: 'NOT_FOUND',
  notAllowed: 'FORBIDDEN',
  afterTomorrow: 'UNPROCESSABLE_CONTENT',
  odometerBackwards: 'UNPROCESSABLE_CONTENT',
  orderUnclear: 'UNPROCESSABLE_CONTENT',
  alreadyFitted: 'UNPROCESSABLE_CONTENT',
  looksTheSame: 'UNPROCESSABLE_CONTENT',
  commandReused: 'CONFLICT',
  conflict: 'CONFLICT',
  removed: 'CONFLICT',
  idInUse: 'CONFLICT',
  tooLarge: 'PAYLOAD_TOO_LARGE',
  setupToken: 'FORBIDDEN',
  signedOut: 'UNAUTHORIZED',
};

export function trpcCode(code: RefusalCode): TRPC_ERROR_CODE_KEY {
  return TRPC_CODE[code];
}
