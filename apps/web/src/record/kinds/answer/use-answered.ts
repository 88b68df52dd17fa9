'use client';

import { entryLine, formatDay } from '@quartermark/engine/display';
import type { EntryInput } from '@quartermark/engine/log';
import { inspectionLines } from '@quartermark/engine/matters';
import { useQuery } from '@tanstack/react-query';
import { useTRPC } from '../../../client/trpc.ts';
import type { About } from '../../about.ts';

type Answered = {
  /** what is answered; empty while that is not at hand */
  words: string;
  /** what is to be looked at */
  lines: readonly string[];
};

const NOTHING: Answered = { words: '', lines: [] };

/** Ids that this app makes; what is not one is a notice by its name. */
const UUID = /^[\da-f]{8}(-[\da-f]{4}){3}-[\da-f]{12}$/i;

/** What an answer is to: from what the form has at hand, or else from the server. */
export function useAnswered(
  { garage, findings, incidents, items }: About,
  notice: string,
): Answered {
  const trpc = useTRPC();
  const finding = findings.find(({ entry }) => entry === notice);
  const incident = incidents.find(({ entry }) => entry === notice);
  const { data } = useQuery({
    ...trpc.entry.one.queryOptions({ garageId: garage.id, entryId: notice }),
    enabled: !finding && UUID.test(notice),
  });
  if (finding)
    return { words: `To the finding of ${formatDay(finding.on)}: ${finding.what}.`, lines: [] };
  if (data) return { words: wordsOf(data.entry, items), lines: linesOf(data.entry) };
  return incident ? { ...NOTHING, lines: incident.lines } : NOTHING;
}

function wordsOf(entry: EntryInput, items: About['items']): string {
  const { title, detail } = entryLine(entry, items);
  const said = [title, detail].filter((part) => part !== '').join(': ');
  return `To ${formatDay(entry.on)}, ${said}.`;
}

const linesOf = (entry: EntryInput) =>
  entry.kind === 'incident' ? inspectionLines(entry.what) : [];
