'use client';

import { keepPreviousData, useInfiniteQuery } from '@tanstack/react-query';
import { useTRPC } from '../client/trpc.ts';
import type { DueFilter, DuePart } from './due-filter.ts';
import { duePages, dueQuestion } from './due-question.ts';

/** One part of the garage's list, page by page. */
export function useDuePart(garageId: string, filter: DueFilter, part: DuePart) {
  const trpc = useTRPC();
  return useInfiniteQuery({
    ...trpc.due.list.infiniteQueryOptions(dueQuestion(garageId, filter, part), duePages),
    placeholderData: keepPreviousData,
  });
}

export type DuePartQuery = ReturnType<typeof useDuePart>;
