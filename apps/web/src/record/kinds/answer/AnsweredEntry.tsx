'use client';

import { entryLine, formatDay } from '@quartermark/engine/display';
import { useQuery } from '@tanstack/react-query';
import { useTRPC } from '../../../client/trpc.ts';
import type { About } from '../../about.ts';

type AnsweredEntryProps = { garageId: string; about: About; notice: string };

/** Ids that this app makes; what is not one is a notice by its name. */
const UUID = /^[\da-f]{8}(-[\da-f]{4}){3}-[\da-f]{12}$/i;

/** What is answered, in words. */
export function AnsweredEntry({ garageId, about, notice }: AnsweredEntryProps) {
  const trpc = useTRPC();
  const found = about.findings.find(({ entry }) => entry === notice);
  const { data } = useQuery({
    ...trpc.entry.one.queryOptions({ garageId, entryId: notice }),
    enabled: found === undefined && UUID.test(notice),
  });
  if (found) return <p>{`To the finding of ${formatDay(found.on)}: ${found.what}.`}</p>;
  if (!data) return null;
  const { title, detail } = entryLine(data.entry, about.items);
  const said = [title, detail].filter((words) => words !== '').join(': ');
  return <p>{`To ${formatDay(data.entry.on)}, ${said}.`}</p>;
}
