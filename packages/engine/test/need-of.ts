import type { Need } from '../src/readiness/result.ts';

/** A need that is met, unless something else is said of it. */
export const needOf = (more: Partial<Need>): Need => ({
  id: 'limit:i',
  kind: 'limit',
  subject: 'i',
  weight: 'blocking',
  status: 'met',
  title: 'Brake fluid, flush',
  margin: null,
  reason: 'It lasts until the end.',
  evidence: [],
  remedy: null,
  accepted: null,
  mayAccept: true,
  ...more,
});
