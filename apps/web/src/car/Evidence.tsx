'use client';

import { useQueries } from '@tanstack/react-query';
import { refusalWords } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { Button, Notice, Skeleton } from '../components/index.ts';
import { type EntryContext, EntryRow } from './EntryRow.tsx';

/** The api gives so many entries at once. */
const AT_ONCE = 100;

type EvidenceProps = { ids: readonly string[]; view: EntryContext };

/** The entries a figure rests on, fetched when somebody wants to see them. */
export function Evidence({ ids, view }: EvidenceProps) {
  const trpc = useTRPC();
  const garageId = view.garage.id;
  const answers = useQueries({
    queries: inParts(ids).map((entryIds) =>
      trpc.entry.some.queryOptions({ garageId, entryIds: [...entryIds] }),
    ),
  });
  const failed = answers.find((answer) => answer.isError);
  if (failed)
    return (
      <Notice
        tone="alarm"
        actions={
          <Button onClick={() => answers.forEach((answer) => void answer.refetch())}>
            Try again
          </Button>
        }
      >
        {refusalWords(failed.error).message}
      </Notice>
    );
  if (answers.some((answer) => answer.isPending)) return <Skeleton of="the entries" rows={1} />;
  return (
    <ul>
      {answers
        .flatMap((answer) => answer.data ?? [])
        .map((entry) => (
          <EntryRow key={entry.entry.id} entry={entry} view={view} brief />
        ))}
    </ul>
  );
}

function inParts(ids: readonly string[]): (readonly string[])[] {
  const parts = Math.ceil(ids.length / AT_ONCE);
  return Array.from({ length: parts }, (_, at) => ids.slice(at * AT_ONCE, (at + 1) * AT_ONCE));
}
