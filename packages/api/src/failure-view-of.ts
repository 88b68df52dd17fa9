import type { FailureView } from './views.ts';

export function failureViewOf(
  row: { since: Date; attempts: number; cause: string } | null,
): FailureView | null {
  return row && { since: row.since.toISOString(), attempts: row.attempts, cause: row.cause };
}
